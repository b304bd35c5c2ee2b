package growingon.report.fit;

import growingon.fit.Fit;
import growingon.fit.value.Value;
import growingon.fit.value.Value.Verdict;
import growingon.fit.value.Value.What;
import growingon.report.text.Phrases;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a fit says of its values: one by one, and of those that agree or can not be told.
 *
 * @param measured the month in which a year's growth is measured
 */
record ValueWords(Fit fit, Phrases say, String measured) {

  String line(Value each) {
    return "%-24s %s; rests %s on your records"
        .formatted(subject(each), said(each), say.percent(each.weight()));
  }

  static String subject(Value each) {
    return each.condition().isEmpty() ? each.species() : each.species() + ", " + each.condition();
  }

  String said(Value each) {
    return switch (each.what()) {
      case GROWTH ->
          "grows %s (%s to %s) as fast as assumed: %s mm a year, not %s"
              .formatted(
                  hundredths(each.value()),
                  hundredths(each.p10()),
                  hundredths(each.p90()),
                  say.number(each.mmNew()),
                  say.number(each.mmOld()));
      case FIRST_YEAR_LOSS ->
          "loses %s %% in the first year (%s to %s), not %s %%".formatted(percents(each));
      case LATER_LOSS ->
          "loses %s %% a year (%s to %s) after the first, not %s %%".formatted(percents(each));
      case VIGOUR_SPREAD ->
          "differs by %s %% from plant to plant (%s to %s), not %s %%".formatted(percents(each));
      case YEAR_SPREAD ->
          "differs by %s %% from season to season (%s to %s), not %s %%".formatted(percents(each));
      case CURVE -> "grows by another law (sheet Values)";
      case LOSS_SPREAD ->
          "differs in losses by %s %% from season to season (%s to %s), not %s %%"
              .formatted(percents(each));
    };
  }

  private Object[] percents(Value each) {
    return new Object[] {
      tenths(each.value()), tenths(each.p10()), tenths(each.p90()), tenths(each.old())
    };
  }

  /** A share in percent as the records can tell it: 1.3, 17. */
  private String tenths(double percent) {
    return Math.abs(percent) < 10 ? say.number(percent) : say.whole(percent);
  }

  String hundredths(double value) {
    return say.decimals(value, 2);
  }

  /** What agrees, in one line. */
  Optional<String> agrees() {
    List<Value> agrees = fit.with(Verdict.AGREES);
    List<String> speeds =
        agrees.stream()
            .filter(each -> each.what() == What.GROWTH)
            .map(
                each ->
                    "%s (%s, %s to %s)"
                        .formatted(
                            subject(each),
                            hundredths(each.value()),
                            hundredths(each.p10()),
                            hundredths(each.p90())))
            .toList();
    long others = agrees.size() - speeds.size();
    if (agrees.isEmpty()) {
      return Optional.empty();
    }
    List<String> parts = new ArrayList<>();
    if (!speeds.isEmpty()) {
      parts.add("growth of " + Phrases.list(speeds, 4, "others"));
    }
    if (others > 0) {
      parts.add(say.counted(others, "loss or spread", "losses and spreads"));
    }
    return Optional.of("Agrees: " + String.join("; ", parts) + ".");
  }

  /** Growth of which there are too few counts. */
  private List<Value> thin() {
    return fit.with(Verdict.TOO_THIN).stream().filter(each -> each.what() == What.GROWTH).toList();
  }

  /** How many values have too few counts, and what to do, in one line. */
  Optional<String> tooThin() {
    int all = fit.with(Verdict.TOO_THIN).size();
    return all == 0
        ? Optional.empty()
        : Optional.of(
            "Too few counts to tell: %s.%s".formatted(say.counted(all, "value", "values"), best()));
  }

  /** What would tell most, beginning with a space. */
  private String best() {
    return thin().stream()
        .max(Comparator.comparingDouble(Value::weight))
        .map(
            each ->
                " Best: tag 20 of "
                    + subject(each)
                    + " and read the same ones each "
                    + measured
                    + ".")
        .orElse(" Best: count every lot each " + measured + ".");
  }

  /** What would tell most of growth, empty where nothing lacks counts. */
  Optional<String> next() {
    return thin().isEmpty() ? Optional.empty() : Optional.of(best().strip());
  }
}
