package growingon.report.fit;

import growingon.fit.Fit;
import growingon.fit.Value;
import growingon.fit.Value.What;
import growingon.nursery.Curve;
import growingon.nursery.Species;
import growingon.report.text.Phrases;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What is proposed, as edits of the species' files. */
final class FitProposal {
  private FitProposal() {}

  /** A number that is the same to so much stands in the file already. */
  private static final double SAME = 1e-6;

  static List<SpeciesEdit> edits(Fit fit, Map<String, Species> now) {
    return fit.changed().stream()
        .map(value -> edit(fit, value))
        .filter(edit -> !isThere(edit, now.get(edit.species())))
        .toList();
  }

  private static boolean isThere(SpeciesEdit edit, Species now) {
    double there =
        edit.condition().isEmpty()
            ? 100 * value(edit.key(), now)
            : now.growth().get(edit.condition()).rate();
    return Math.abs(there - edit.number()) <= SAME * Math.abs(edit.number());
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

  private static SpeciesEdit edit(Fit fit, Value value) {
    if (value.what() != What.GROWTH) {
      String key = value.what().toString();
      return new SpeciesEdit(
          value.species(), "", key, key, value.inFile(), value.old(), comment(value, 1));
    }
    Curve old = fit.assumed().get(value.species()).growth().get(value.condition());
    double rate = old.rate();
    return new SpeciesEdit(
        value.species(),
        value.condition(),
        key(old),
        "mm a year " + value.condition(),
        value.inFile() * rate,
        rate,
        comment(value, rate));
  }

  private static String comment(Value value, double unit) {
    String of =
        switch (value.what()) {
          case GROWTH -> Phrases.counted(value.counts(), "count", "counts");
          case VIGOUR_SPREAD -> Phrases.counted(value.counts(), "tagged plant", "tagged plants");
          default -> "records";
        };
    String lots = value.lots() > 0 ? " of " + Phrases.counted(value.lots(), "lot", "lots") : "";
    return "was %s; 80 %% %s to %s; %s%s, %s"
        .formatted(
            number(value.old() * unit),
            number(value.p10() * unit),
            number(value.p90() * unit),
            of,
            lots,
            Phrases.counted(value.seasons(), "season", "seasons"));
  }

  /** Three digits that count. */
  static String number(double value) {
    return new java.math.BigDecimal(value)
        .round(new java.math.MathContext(3))
        .stripTrailingZeros()
        .toPlainString();
  }

  private static String key(Curve curve) {
    if (curve instanceof Curve.Steady) {
      return "g";
    }
    boolean isK = curve instanceof Curve.Levelling || curve instanceof Curve.Richards;
    return isK ? "k" : "r";
  }

  /** What a species is called where a name begins a sentence. */
  static String capital(String name) {
    return name.isEmpty()
        ? name
        : name.substring(0, 1).toUpperCase(Locale.ENGLISH) + name.substring(1);
  }
}
