package growingon.review.kept;

import java.util.List;

/**
 * Which draws of a kept plan had a figure of a lot from P10 to P90 of the other draws, by month:
 * hexadecimal digits of four draws each, the first draw's bit the highest.
 *
 * @param living plants alive at the month's end
 * @param trunkMm mean trunk of the living
 * @param unitsSold plants sold up to then
 * @param deaths plants that died up to then
 * @param price money of all sales so far as a share of list price
 */
public record KeptWithin(
    List<String> living,
    List<String> trunkMm,
    List<String> unitsSold,
    List<String> deaths,
    List<String> price) {
  public KeptWithin {
    living = List.copyOf(living);
    trunkMm = List.copyOf(trunkMm);
    unitsSold = List.copyOf(unitsSold);
    deaths = List.copyOf(deaths);
    price = List.copyOf(price);
  }
}
