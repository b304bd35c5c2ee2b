package growingon.report.fit;

import growingon.fit.Fit;
import growingon.fit.value.SiteSpeed;
import growingon.fit.value.Value;
import growingon.fit.value.Value.What;
import growingon.nursery.species.Curve;
import growingon.nursery.species.Species;
import growingon.report.text.Phrases;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** What is proposed, as edits of the species' files. */
final class FitProposal {
  private FitProposal() {}

  /** A number that is the same to so much stands in the file already. */
  private static final double SAME = 1e-6;

  static List<SpeciesEdit> edits(Fit fit, Map<String, Species> now) {
    return fit.values().stream()
        .filter(value -> value.what() != What.CURVE)
        .filter(value -> value.isChanged() || value.isLearnt())
        .map(value -> edit(fit, value, now.get(value.species())))
        .filter(edit -> edit.isOther() || !isAsSure(edit, now.get(edit.species())))
        .toList();
  }

  private static boolean isAsSure(SpeciesEdit edit, Species now) {
    return edit.sure().isEmpty() || isSame(100 * sure(edit, now), edit.sure().getAsDouble());
  }

  private static double there(Value value, Species now) {
    return value.what() == What.GROWTH
        ? now.growth().get(value.condition()).rate()
        : 100 * value(value.what().toString(), now);
  }

  private static boolean isSame(double one, double other) {
    return Math.abs(one - other) <= SAME * Math.abs(other);
  }

  private static double sure(SpeciesEdit edit, Species now) {
    if (edit.isGrowth()) {
      return now.sure().growthIn(edit.condition());
    }
    return edit.key().equals(What.LATER_LOSS.toString())
        ? now.sure().laterLoss()
        : now.sure().firstYearLoss();
  }

  private static double value(String key, Species species) {
    for (What what : What.values()) {
      if (what.toString().equals(key)) {
        return switch (what) {
          case FIRST_YEAR_LOSS -> species.firstYearLoss();
          case LATER_LOSS -> species.laterLoss();
          case VIGOUR_SPREAD -> species.vigourSpread();
          case YEAR_SPREAD -> species.yearSpread();
          case LOSS_SPREAD -> species.lossSpread();
          case GROWTH, CURVE -> Double.NaN;
        };
      }
    }
    return Double.NaN;
  }

  private static SpeciesEdit edit(Fit fit, Value value, Species now) {
    Species assumed = fit.assumed().get(value.species());
    boolean isGrowth = value.what() == What.GROWTH;
    String what = value.what().toString();
    double unit = isGrowth ? assumed.growth().get(value.condition()).rate() : 1;
    boolean isSure = value.isLearnt();
    return new SpeciesEdit(
        value.species(),
        value.condition(),
        assumed.growth().keySet().stream().sorted().toList(),
        isGrowth ? assumed.growth().get(value.condition()).rateName() : what,
        isGrowth ? "mm a year " + value.condition() : what,
        !isSame(there(value, now), value.inFile() * unit),
        isGrowth ? most(now.growth().get(value.condition())) : OptionalDouble.empty(),
        value.inFile() * unit,
        value.old() * unit,
        isSure ? OptionalDouble.of(percent(value.sureNew())) : OptionalDouble.empty(),
        isSure ? OptionalDouble.of(100 * value.sureOld()) : OptionalDouble.empty(),
        comment(value, unit));
  }

  /** The text of the settings that go with a site speed. */
  static String siteSpeed(SiteSpeed site) {
    return """
        Proposed by fit: %d species of the library that you have measured grow %s times as fast here
        as the library says. With these two settings (in nursery.json, or on the sheet settings) all
        library species that you have not measured grow by it, too.

        site speed: %s
        site speed from: %d
        """
        .formatted(site.species(), number(site.rounded()), number(site.rounded()), site.species());
  }

  private static OptionalDouble most(Curve curve) {
    return curve instanceof Curve.Steady steady && Double.isFinite(steady.mostMm())
        ? OptionalDouble.of(steady.mostMm())
        : OptionalDouble.empty();
  }

  /** To a tenth, and never known for good. */
  private static double percent(double share) {
    return Math.max(1, Math.min(99.9, Math.round(1000 * share) / 10.0));
  }

  private static String comment(Value value, double unit) {
    String of =
        switch (value.what()) {
          case GROWTH -> Phrases.PLAIN.counted(value.counts(), "count", "counts");
          case VIGOUR_SPREAD ->
              Phrases.PLAIN.counted(value.counts(), "tagged plant", "tagged plants");
          default -> "records";
        };
    String lots =
        value.lots() > 0 ? " of " + Phrases.PLAIN.counted(value.lots(), "lot", "lots") : "";
    return "was %s; 80 %% %s to %s; %s%s, %s"
        .formatted(
            number(value.old() * unit),
            number(value.p10() * unit),
            number(value.p90() * unit),
            of,
            lots,
            Phrases.PLAIN.counted(value.seasons(), "season", "seasons"));
  }

  /** Three digits that count. */
  static String number(double value) {
    return new java.math.BigDecimal(value)
        .round(new java.math.MathContext(3))
        .stripTrailingZeros()
        .toPlainString();
  }
}
