package growingon.report.fit;

import growingon.fit.Fit;
import growingon.fit.RecordRow;
import growingon.fit.evidence.Saleable;
import growingon.fit.score.ForecastScore;
import growingon.fit.value.Value;
import growingon.report.build.TableOf;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Table;
import growingon.report.text.Plants;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The tables of a fit. */
final class FitTables {
  private final Fit fit;

  FitTables(Fit fit) {
    this.fit = fit;
  }

  Table values() {
    return ofValues("fit-values", "Every assumption held against the records")
        .column("old", "", Kind.NUMBER, Value::old)
        .column("new", "", Kind.NUMBER, Value::value)
        .column("P10", "", Kind.NUMBER, Value::p10)
        .column("P90", "", Kind.NUMBER, Value::p90)
        .column("mm old", "mm a year", Kind.MM, Value::mmOld)
        .column("mm new", "mm a year", Kind.MM, Value::mmNew)
        .column("intervals", "", Kind.COUNT, Value::counts)
        .column("lots", "", Kind.COUNT, Value::lots)
        .column("seasons", "", Kind.COUNT, Value::seasons)
        .column("weight", "%", Kind.COUNT, each -> 100 * each.weight())
        .text("verdict", each -> each.verdict().toString())
        .column("in file", "", Kind.NUMBER, Value::inFile)
        .column("sure old", "%", Kind.NUMBER, each -> 100 * each.sureOld())
        .column("sure new", "%", Kind.NUMBER, each -> 100 * each.sureNew())
        .longText("why", Value::why)
        .of(fit.values());
  }

  /** What a reader wants of every value, those that changed first. */
  Table figures() {
    return ofValues("fit-figures", "Every assumption held against the records")
        .column("old", "", Kind.NUMBER, Value::old)
        .column("new", "", Kind.NUMBER, each -> isTold(each) ? each.value() : null)
        .column("P10", "", Kind.NUMBER, each -> isTold(each) ? each.p10() : null)
        .column("P90", "", Kind.NUMBER, each -> isTold(each) ? each.p90() : null)
        .column("mm old", "mm a year", Kind.MM, Value::mmOld)
        .column("mm new", "mm a year", Kind.MM, Value::mmNew)
        .text("verdict", each -> each.verdict().toString())
        .of(byVerdict());
  }

  /** What each value rests on. */
  Table grounds() {
    return ofValues("fit-grounds", "What each rests on")
        .column("counts", "", Kind.COUNT, Value::counts)
        .column("lots", "", Kind.COUNT, Value::lots)
        .column("seasons", "", Kind.COUNT, Value::seasons)
        .column("weight", "%", Kind.COUNT, each -> 100 * each.weight())
        .column("sure old", "%", Kind.COUNT, each -> 100 * each.sureOld())
        .column("sure new", "%", Kind.COUNT, each -> 100 * each.sureNew())
        .longText("why", Value::why)
        .of(byVerdict().stream().filter(FitTables::isTold).toList());
  }

  /** A table of a row for each value, with what it is of. */
  private static TableOf<Value> ofValues(String name, String title) {
    return TableOf.<Value>table(name, title)
        .text("species", Value::species)
        .text("condition", each -> Rows.text(each.condition()))
        .text("what", each -> each.what().toString());
  }

  private static boolean isTold(Value value) {
    return value.counts() > 0;
  }

  private List<Value> byVerdict() {
    return fit.values().stream().sorted(Comparator.comparing(Value::verdict)).toList();
  }

  /** What a reader wants of every interval. */
  Table intervals() {
    return TableOf.<RecordRow>table("fit-intervals", "Every interval between two measurements")
        .note(
            "Trunks in mm. Expected: by the first assumptions, after the sales that were. z: the"
                + " difference in standard deviations.")
        .text("subject", RecordRow::subject)
        .month("from", RecordRow::from)
        .month("to", RecordRow::to)
        .column("trunk from", "mm", Kind.MM, RecordRow::trunkFrom)
        .column("trunk to", "mm", Kind.MM, RecordRow::trunkTo)
        .column("expected", "mm", Kind.MM, RecordRow::expected)
        .column("z", "", Kind.NUMBER, RecordRow::z)
        .column("gone", "", Kind.COUNT, RecordRow::gone)
        .column("sold", "", Kind.COUNT, RecordRow::sold)
        .text("used", each -> each.used() ? "yes" : "no")
        .longText("why", each -> Rows.text(each.why()))
        .of(fit.records());
  }

  Table records() {
    return TableOf.<RecordRow>table("fit-records", "Every interval between two measurements")
        .note(
            "Trunks in mm. Expected: by the first assumptions, after the sales that were. sd:"
                + " standard deviation of the difference; z: the difference in sd.")
        .text("subject", RecordRow::subject)
        .text("species", each -> Rows.text(each.species()))
        .text("condition", each -> Rows.text(each.condition()))
        .month("from", RecordRow::from)
        .month("to", RecordRow::to)
        .column("trunk from", "mm", Kind.MM, RecordRow::trunkFrom)
        .column("trunk to", "mm", Kind.MM, RecordRow::trunkTo)
        .column("expected", "mm", Kind.MM, RecordRow::expected)
        .column("difference", "mm", Kind.MM, RecordRow::difference)
        .column("sd", "mm", Kind.MM, RecordRow::deviation)
        .column("z", "", Kind.NUMBER, RecordRow::z)
        .column("clock", "growth years", Kind.NUMBER, RecordRow::clock)
        .column("gone", "", Kind.NUMBER, RecordRow::gone)
        .column("sold", "", Kind.NUMBER, RecordRow::sold)
        .text("used", each -> each.used() ? "yes" : "no")
        .longText("why", each -> Rows.text(each.why()))
        .of(fit.records());
  }

  Table losses() {
    return TableOf.<Fit.LossUnit>table("fit-losses", "Deaths of each season and lot")
        .text("species", Fit.LossUnit::species)
        .text("what", each -> each.what().toString())
        .text("unit", Fit.LossUnit::unit)
        .column("exposure", "plant-years", Kind.NUMBER, Fit.LossUnit::exposure)
        .column("deaths", "", Kind.NUMBER, Fit.LossUnit::deaths)
        .column("expected", "", Kind.NUMBER, Fit.LossUnit::expected)
        .of(fit.losses());
  }

  Table seasons() {
    return TableOf.<Fit.Season>table("fit-seasons", "How well each season grew")
        .text("season", Fit.Season::season)
        .text("species", Fit.Season::species)
        .column("factor", "", Kind.NUMBER, Fit.Season::factor)
        .column("P10", "", Kind.NUMBER, Fit.Season::p10)
        .column("P90", "", Kind.NUMBER, Fit.Season::p90)
        .of(fit.seasons());
  }

  Table checked() {
    return TableOf.<Fit.Checked>table("fit-checked", "Growth after root work and in small pots")
        .note("z mean below 0: they grew less than was assumed of them.")
        .text("species", Fit.Checked::species)
        .text("state", Fit.Checked::state)
        .column("intervals", "", Kind.COUNT, Fit.Checked::intervals)
        .column("z mean", "", Kind.NUMBER, Fit.Checked::meanZ)
        .of(fit.checked());
  }

  /** Plants for sale as assumed before and now, whole. */
  private record ForSale(Saleable saleable, Plants old, Plants now) {}

  private List<ForSale> forSale() {
    Map<String, Adding> old = new HashMap<>();
    Map<String, Adding> now = new HashMap<>();
    List<ForSale> all = new ArrayList<>();
    for (Saleable each : fit.saleable()) {
      all.add(
          new ForSale(
              each,
              old.computeIfAbsent(each.season(), none -> new Adding()).next(each.old()),
              now.computeIfAbsent(each.season(), none -> new Adding()).next(each.now())));
    }
    return all;
  }

  Table saleable() {
    return TableOf.<ForSale>table(
            "fit-saleable", "Plants for sale, sold or ready at the season's end")
        .text("season", each -> each.saleable.season())
        .text("species", each -> each.saleable.species())
        .text("grade", each -> each.saleable.grade())
        .column("old", "", Kind.PLANTS, ForSale::old)
        .column("new", "", Kind.PLANTS, ForSale::now)
        .column("difference", "", Kind.PLANTS, each -> each.now.minus(each.old))
        .of(forSale());
  }

  /** Whole plants whose sum is that of all in whole plants, at every row. */
  private static final class Adding {
    private double exact;

    Plants next(double more) {
      long before = Math.round(exact);
      exact += more;
      return Plants.of(more, Math.round(exact) - before);
    }
  }

  Table ahead() {
    return TableOf.<Fit.Ahead>table("fit-ahead", "The assumptions now, one count ahead")
        .text("species", each -> each.species().isEmpty() ? "all" : each.species())
        .column("intervals", "", Kind.COUNT, Fit.Ahead::intervals)
        .column("z mean", "", Kind.NUMBER, Fit.Ahead::meanZ)
        .column("z root mean square", "", Kind.NUMBER, Fit.Ahead::rootMeanSquareZ)
        .column("inside", "", Kind.COUNT, Fit.Ahead::inside)
        .of(fit.ahead());
  }

  Table scores() {
    return TableOf.<ForecastScore>table(
            "forecast-scores", "Kept plans against what was counted and sold")
        .note(
            "Inside: from P10 to P90. Low, high: the share that should be, as nine in ten of"
                + " the plan's own draws had it; of an older file of luck alone, as figures that"
                + " know nothing of each other have it. Score: twice the mean pinball loss, in plants or mm, the less the"
                + " better.")
        .text("plan", ForecastScore::plan)
        .text("figure", ForecastScore::figure)
        .text("species", each -> Rows.text(each.species()))
        .text("lead", each -> Rows.text(each.lead()))
        .column("scored", "", Kind.COUNT, ForecastScore::scored)
        .column("inside", "", Kind.COUNT, ForecastScore::inside)
        .column("low", "", Kind.SHARE, ForecastScore::low)
        .column("high", "", Kind.SHARE, ForecastScore::high)
        .column("bias", "", Kind.SHARE, ForecastScore::bias)
        .column("score", "", Kind.NUMBER, ForecastScore::score)
        .column("mean error", "", Kind.NUMBER, ForecastScore::meanError)
        .text("verdict", ForecastScore::verdict)
        .of(fit.scores());
  }
}
