package growingon.nursery.supply;

import growingon.nursery.number.Check;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A pot, with its volume from its measures. Round: frustum of a cone; square and rectangular:
 * prismatoid whose base width is the top width × base/top (both from solid geometry); or stated
 * litres.
 *
 * @param name as routes name it
 * @param shape round, square, rectangular or stated litres
 * @param topMm inner top diameter or side; long side of a rectangular pot
 * @param baseMm base diameter or side (along {@code topMm})
 * @param heightMm inner height
 * @param widthMm top width of a rectangular pot; as {@code topMm} for the others
 * @param statedLitres brim volume where it is stated
 * @param condition growing condition, if it names one
 * @param fillShare share of the brim volume that is filled
 * @param price of one pot
 * @param pack pots in a pack
 * @param onHand pots on hand
 * @param reuseShare share of emptied pots that can be used again
 * @param emptyKg weight of the empty pot
 * @param source from whom it is bought
 */
@RecordBuilder
public record Pot(
    String name,
    PotShape shape,
    double topMm,
    double baseMm,
    double heightMm,
    double widthMm,
    OptionalDouble statedLitres,
    Optional<String> condition,
    double fillShare,
    double price,
    int pack,
    double onHand,
    double reuseShare,
    double emptyKg,
    Source source)
    implements PotBuilder.With {
  public Pot {
    Objects.requireNonNull(source);
    Check.named(name, "a pot");
    Objects.requireNonNull(shape);
    Objects.requireNonNull(condition);
    Check.positive(topMm, "top of " + name);
    Check.positive(widthMm, "width of " + name);
    if (statedLitres.isPresent()) {
      Check.positive(statedLitres.getAsDouble(), "litres of " + name);
    } else {
      Check.positive(baseMm, "base of " + name);
      Check.positive(heightMm, "height of " + name);
    }
    Check.share(fillShare, "fill of " + name);
    Check.notNegative(price, "price of " + name);
    Check.that(pack >= 1, "a pack has at least one pot", pack);
    Check.notNegative(onHand, "pots on hand");
    Check.share(reuseShare, "reuse of " + name);
    Check.notNegative(emptyKg, "empty weight of " + name);
  }

  /** Volume to the brim, litres. */
  public double brimLitres() {
    if (statedLitres.isPresent()) {
      return statedLitres.getAsDouble();
    }
    if (shape == PotShape.RECTANGULAR || shape == PotShape.SQUARE) {
      double baseWidthMm = widthMm * baseMm / topMm;
      double middle = (topMm + baseMm) / 2 * (widthMm + baseWidthMm) / 2;
      return heightMm / 6 * (topMm * widthMm + 4 * middle + baseMm * baseWidthMm) / 1e6;
    }
    double top = topMm / 2;
    double base = baseMm / 2;
    return Math.PI * heightMm * (top * top + top * base + base * base) / 3 / 1e6;
  }

  /** Litres of compacted substrate and ball it holds when filled. */
  public double fillLitres() {
    return brimLitres() * fillShare;
  }

  /** A pot of which nothing else is said yet: what is not said has its usual value. */
  public static PotBuilder named(String name, PotShape shape) {
    return PotBuilder.builder().name(name).shape(shape).pack(1).source(Source.UNSTATED);
  }
}
