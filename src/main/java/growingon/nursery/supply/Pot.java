package growingon.nursery.supply;

import growingon.nursery.number.Check;
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
    Source source) {
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

  /** A pot of which nothing else is said yet. */
  public static Builder named(String name, PotShape shape) {
    Builder builder = new Builder();
    builder.name = name;
    builder.shape = shape;
    return builder;
  }

  /** The parts of this one, of which some can be put in place of others. */
  public Builder but() {
    Builder builder = new Builder();
    builder.name = name;
    builder.shape = shape;
    builder.topMm = topMm;
    builder.baseMm = baseMm;
    builder.heightMm = heightMm;
    builder.widthMm = widthMm;
    builder.statedLitres = statedLitres;
    builder.condition = condition;
    builder.fillShare = fillShare;
    builder.price = price;
    builder.pack = pack;
    builder.onHand = onHand;
    builder.reuseShare = reuseShare;
    builder.emptyKg = emptyKg;
    builder.source = source;
    return builder;
  }

  /** Its parts by name; what is not said has its usual value. */
  public static final class Builder {
    private String name;
    private PotShape shape;
    private double topMm;
    private double baseMm;
    private double heightMm;
    private double widthMm;
    private OptionalDouble statedLitres = OptionalDouble.empty();
    private Optional<String> condition = Optional.empty();
    private double fillShare;
    private double price = 0;
    private int pack = 1;
    private double onHand = 0;
    private double reuseShare = 0;
    private double emptyKg = 0;
    private Source source = Source.UNSTATED;

    private Builder() {}

    public Builder topMm(double value) {
      this.topMm = value;
      return this;
    }

    public Builder baseMm(double value) {
      this.baseMm = value;
      return this;
    }

    public Builder heightMm(double value) {
      this.heightMm = value;
      return this;
    }

    public Builder widthMm(double value) {
      this.widthMm = value;
      return this;
    }

    public Builder statedLitres(OptionalDouble value) {
      this.statedLitres = value;
      return this;
    }

    public Builder condition(Optional<String> value) {
      this.condition = value;
      return this;
    }

    public Builder fillShare(double value) {
      this.fillShare = value;
      return this;
    }

    public Builder price(double value) {
      this.price = value;
      return this;
    }

    public Builder pack(int value) {
      this.pack = value;
      return this;
    }

    public Builder onHand(double value) {
      this.onHand = value;
      return this;
    }

    public Builder reuseShare(double value) {
      this.reuseShare = value;
      return this;
    }

    public Builder emptyKg(double value) {
      this.emptyKg = value;
      return this;
    }

    public Builder source(Source value) {
      this.source = value;
      return this;
    }

    public Pot build() {
      return new Pot(
          name,
          shape,
          topMm,
          baseMm,
          heightMm,
          widthMm,
          statedLitres,
          condition,
          fillShare,
          price,
          pack,
          onHand,
          reuseShare,
          emptyKg,
          source);
    }
  }
}
