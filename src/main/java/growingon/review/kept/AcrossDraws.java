package growingon.review.kept;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Counts, draw by draw, how many of some figures lay from P10 to P90 of the other draws. Figures of
 * one nursery are good or bad together, so that their number differs by far more from draw to draw
 * than that of figures which know nothing of each other.
 */
public final class AcrossDraws {
  private static final int DRAWS_A_DIGIT = 4;
  private static final int RADIX = 16;
  private static final double RARE = 0.05;

  private AcrossDraws() {}

  /**
   * Between what the number inside lies in nine draws of ten.
   *
   * @param low one draw in twenty had fewer
   * @param high one draw in twenty had more
   * @param of how many figures were counted
   */
  public record Inside(int low, int high, int of) {}

  /**
   * Counts.
   *
   * @param digits for each figure which draws were inside, as in {@link KeptWithin}
   * @param draws how many draws there were
   * @return empty without draws, or where the digits are not those of so many draws
   */
  public static Optional<Inside> count(List<String> digits, int draws) {
    boolean fits =
        digits.stream()
            .allMatch(each -> each.length() == (draws + DRAWS_A_DIGIT - 1) / DRAWS_A_DIGIT);
    if (draws < 1 || !fits) {
      return Optional.empty();
    }
    int[] counts =
        IntStream.range(0, draws)
            .map(draw -> (int) digits.stream().filter(each -> isInside(each, draw)).count())
            .sorted()
            .toArray();
    int rare = (int) Math.floor(RARE * (draws - 1));
    return Optional.of(new Inside(counts[rare], counts[draws - 1 - rare], digits.size()));
  }

  private static boolean isInside(String digits, int draw) {
    int digit = Character.digit(digits.charAt(draw / DRAWS_A_DIGIT), RADIX);
    return (digit >> (DRAWS_A_DIGIT - 1 - draw % DRAWS_A_DIGIT) & 1) == 1;
  }
}
