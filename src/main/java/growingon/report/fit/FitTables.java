package growingon.report.fit;

import growingon.fit.Fit;
import growingon.fit.ForecastScore;
import growingon.fit.RecordRow;
import growingon.fit.Saleable;
import growingon.fit.Value;
import growingon.report.build.TableBuilder;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Table;
import growingon.report.text.Plants;
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
    TableBuilder table =
        TableBuilder.table("fit-values", "Every assumption held against the records")
            .text("species")
            .text("condition")
            .text("what")
            .column("old", "", Kind.NUMBER)
            .column("new", "", Kind.NUMBER)
            .column("P10", "", Kind.NUMBER)
            .column("P90", "", Kind.NUMBER)
            .column("mm old", "mm a year", Kind.MM)
            .column("mm new", "mm a year", Kind.MM)
            .column("intervals", "", Kind.COUNT)
            .column("lots", "", Kind.COUNT)
            .column("seasons", "", Kind.COUNT)
            .column("weight", "%", Kind.COUNT)
            .text("verdict")
            .column("in file", "", Kind.NUMBER)
            .column("sure old", "%", Kind.NUMBER)
            .column("sure new", "%", Kind.NUMBER)
            .longText("why");
    for (Value each : fit.values()) {
      table.row(
          each.species(),
          Rows.text(each.condition()),
          each.what().toString(),
          each.old(),
          each.value(),
          each.p10(),
          each.p90(),
          each.mmOld(),
          each.mmNew(),
          each.counts(),
          each.lots(),
          each.seasons(),
          100 * each.weight(),
          each.verdict().toString(),
          each.inFile(),
          100 * each.sureOld(),
          100 * each.sureNew(),
          each.why());
    }
    return table.build();
  }

  /** What a reader wants of every value, those that changed first. */
  Table figures() {
    TableBuilder table =
        TableBuilder.table("fit-figures", "Every assumption held against the records")
            .text("species")
            .text("condition")
            .text("what")
            .column("old", "", Kind.NUMBER)
            .column("new", "", Kind.NUMBER)
            .column("P10", "", Kind.NUMBER)
            .column("P90", "", Kind.NUMBER)
            .column("mm old", "mm a year", Kind.MM)
            .column("mm new", "mm a year", Kind.MM)
            .text("verdict");
    for (Value each : byVerdict()) {
      boolean isTold = each.counts() > 0;
      table.row(
          each.species(),
          Rows.text(each.condition()),
          each.what().toString(),
          each.old(),
          isTold ? each.value() : Double.NaN,
          isTold ? each.p10() : Double.NaN,
          isTold ? each.p90() : Double.NaN,
          each.mmOld(),
          each.mmNew(),
          each.verdict().toString());
    }
    return table.build();
  }

  /** What each value rests on. */
  Table grounds() {
    TableBuilder table =
        TableBuilder.table("fit-grounds", "What each rests on")
            .text("species")
            .text("condition")
            .text("what")
            .column("counts", "", Kind.COUNT)
            .column("lots", "", Kind.COUNT)
            .column("seasons", "", Kind.COUNT)
            .column("weight", "%", Kind.COUNT)
            .column("sure old", "%", Kind.COUNT)
            .column("sure new", "%", Kind.COUNT)
            .longText("why");
    for (Value each : byVerdict().stream().filter(each -> each.counts() > 0).toList()) {
      table.row(
          each.species(),
          Rows.text(each.condition()),
          each.what().toString(),
          each.counts(),
          each.lots(),
          each.seasons(),
          100 * each.weight(),
          100 * each.sureOld(),
          100 * each.sureNew(),
          each.why());
    }
    return table.build();
  }

  private List<Value> byVerdict() {
    return fit.values().stream().sorted(Comparator.comparing(Value::verdict)).toList();
  }

  /** What a reader wants of every interval. */
  Table intervals() {
    TableBuilder table =
        TableBuilder.table("fit-intervals", "Every interval between two measurements")
            .note(
                "Trunks in mm. Expected: by the first assumptions, after the sales that were. z: the"
                    + " difference in standard deviations.")
            .text("subject")
            .month("from")
            .month("to")
            .column("trunk from", "mm", Kind.MM)
            .column("trunk to", "mm", Kind.MM)
            .column("expected", "mm", Kind.MM)
            .column("z", "", Kind.NUMBER)
            .column("gone", "", Kind.COUNT)
            .column("sold", "", Kind.COUNT)
            .text("used")
            .longText("why");
    for (RecordRow each : fit.records()) {
      table.row(
          each.subject(),
          each.from(),
          each.to(),
          each.trunkFrom(),
          each.trunkTo(),
          each.expected(),
          each.z(),
          each.gone(),
          each.sold(),
          each.used() ? "yes" : "no",
          Rows.text(each.why()));
    }
    return table.build();
  }

  Table records() {
    TableBuilder table =
        TableBuilder.table("fit-records", "Every interval between two measurements")
            .note(
                "Trunks in mm. Expected: by the first assumptions, after the sales that were. sd:"
                    + " standard deviation of the difference; z: the difference in sd.")
            .text("subject")
            .text("species")
            .text("condition")
            .month("from")
            .month("to")
            .column("trunk from", "mm", Kind.MM)
            .column("trunk to", "mm", Kind.MM)
            .column("expected", "mm", Kind.MM)
            .column("difference", "mm", Kind.MM)
            .column("sd", "mm", Kind.MM)
            .column("z", "", Kind.NUMBER)
            .column("clock", "growth years", Kind.NUMBER)
            .column("gone", "", Kind.NUMBER)
            .column("sold", "", Kind.NUMBER)
            .text("used")
            .longText("why");
    for (RecordRow each : fit.records()) {
      table.row(
          each.subject(),
          Rows.text(each.species()),
          Rows.text(each.condition()),
          each.from(),
          each.to(),
          each.trunkFrom(),
          each.trunkTo(),
          each.expected(),
          each.difference(),
          each.deviation(),
          each.z(),
          each.clock(),
          each.gone(),
          each.sold(),
          each.used() ? "yes" : "no",
          Rows.text(each.why()));
    }
    return table.build();
  }

  Table losses() {
    TableBuilder table =
        TableBuilder.table("fit-losses", "Deaths of each season and lot")
            .text("species")
            .text("what")
            .text("unit")
            .column("exposure", "plant-years", Kind.NUMBER)
            .column("deaths", "", Kind.NUMBER)
            .column("expected", "", Kind.NUMBER);
    for (Fit.LossUnit each : fit.losses()) {
      table.row(
          each.species(),
          each.what().toString(),
          each.unit(),
          each.exposure(),
          each.deaths(),
          each.expected());
    }
    return table.build();
  }

  Table seasons() {
    TableBuilder table =
        TableBuilder.table("fit-seasons", "How well each season grew")
            .text("season")
            .text("species")
            .column("factor", "", Kind.NUMBER)
            .column("P10", "", Kind.NUMBER)
            .column("P90", "", Kind.NUMBER);
    for (Fit.Season each : fit.seasons()) {
      table.row(each.season(), each.species(), each.factor(), each.p10(), each.p90());
    }
    return table.build();
  }

  Table checked() {
    TableBuilder table =
        TableBuilder.table("fit-checked", "Growth after root work and in small pots")
            .note("z mean below 0: they grew less than was assumed of them.")
            .text("species")
            .text("state")
            .column("intervals", "", Kind.COUNT)
            .column("z mean", "", Kind.NUMBER);
    for (Fit.Checked each : fit.checked()) {
      table.row(each.species(), each.state(), each.intervals(), each.meanZ());
    }
    return table.build();
  }

  Table saleable() {
    TableBuilder table =
        TableBuilder.table("fit-saleable", "Plants for sale, sold or ready at the season's end")
            .text("season")
            .text("species")
            .text("grade")
            .column("old", "", Kind.PLANTS)
            .column("new", "", Kind.PLANTS)
            .column("difference", "", Kind.PLANTS);
    Map<String, Adding> old = new HashMap<>();
    Map<String, Adding> now = new HashMap<>();
    for (Saleable each : fit.saleable()) {
      Plants before = old.computeIfAbsent(each.season(), none -> new Adding()).next(each.old());
      Plants after = now.computeIfAbsent(each.season(), none -> new Adding()).next(each.now());
      table.row(each.season(), each.species(), each.grade(), before, after, after.minus(before));
    }
    return table.build();
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
    TableBuilder table =
        TableBuilder.table("fit-ahead", "The assumptions now, one count ahead")
            .text("species")
            .column("intervals", "", Kind.COUNT)
            .column("z mean", "", Kind.NUMBER)
            .column("z root mean square", "", Kind.NUMBER)
            .column("inside", "", Kind.COUNT);
    for (Fit.Ahead each : fit.ahead()) {
      table.row(
          each.species().isEmpty() ? "all" : each.species(),
          each.intervals(),
          each.meanZ(),
          each.rootMeanSquareZ(),
          each.inside());
    }
    return table.build();
  }

  Table scores() {
    TableBuilder table =
        TableBuilder.table("forecast-scores", "Kept plans against what was counted and sold")
            .note(
                "Inside: from P10 to P90. Low, high: the share that should be, as nine in ten of"
                    + " the plan's own draws had it; of an older file of luck alone, as figures that"
                    + " know nothing of each other have it. Score: twice the mean pinball loss, in plants or mm, the less the"
                    + " better.")
            .text("plan")
            .text("figure")
            .text("species")
            .text("lead")
            .column("scored", "", Kind.COUNT)
            .column("inside", "", Kind.COUNT)
            .column("low", "", Kind.SHARE)
            .column("high", "", Kind.SHARE)
            .column("bias", "", Kind.SHARE)
            .column("score", "", Kind.NUMBER)
            .column("mean error", "", Kind.NUMBER)
            .text("verdict");
    for (ForecastScore each : fit.scores()) {
      table.row(
          each.plan(),
          each.figure(),
          Rows.text(each.species()),
          Rows.text(each.lead()),
          each.scored(),
          each.inside(),
          each.low(),
          each.high(),
          each.bias(),
          each.score(),
          each.meanError(),
          each.verdict());
    }
    return table.build();
  }
}
