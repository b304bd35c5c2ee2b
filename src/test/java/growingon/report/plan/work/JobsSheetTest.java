package growingon.report.plan.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.place.LiftFrom;
import growingon.nursery.place.PlaceKind;
import growingon.nursery.supply.Material;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Steps;
import growingon.project.history.Happening;
import growingon.project.lot.LotHistory;
import growingon.report.Cells;
import growingon.report.SmallNursery;
import growingon.report.figures.Context;
import growingon.report.model.Kind;
import growingon.report.model.Paper;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import growingon.report.text.Plants;
import java.time.Month;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class JobsSheetTest {
  private final Context context = SmallNursery.context();
  private final Sheet sheet = JobsSheet.of(context);
  private final Cells next = Cells.of(sheet, "jobs-next");
  private final Cells later = Cells.of(sheet, "jobs");

  @Test
  void jobs_ofTheNextTwelveMonths_haveTheirOwnTableBeforeTheRest() {
    assertThat(sheet.tables()).extracting(Table::name).containsExactly("jobs-next", "jobs");
    assertThat(sheet.tables().get(0).title())
        .isEqualTo("The next twelve months: Nov 2026 to Oct 2027");
    assertThat(next.all("month")).allMatch(m -> ((YearMonth) m).isBefore(YearMonth.of(2027, 11)));
    assertThat(later.all("month")).allMatch(m -> ((YearMonth) m).isAfter(YearMonth.of(2027, 10)));
  }

  @Test
  void jobs_everyHappening_standsOnceWithItsHoursAndLitres() {
    List<LotHistory> lots = context.accounts().projection().lots();
    List<Happening> happenings =
        lots.stream()
            .flatMap(lot -> lot.happenings().stream())
            .filter(each -> each.plants() >= 0.5)
            .toList();
    double hours = happenings.stream().mapToDouble(Happening::hours).sum();

    assertThat(next.rows().size() + later.rows().size() - DueBeside.of(context).size())
        .isEqualTo(happenings.size());
    assertThat(next.sum("hours") + later.sum("hours")).isCloseTo(hours, within(1e-9));
  }

  @Test
  void job_overSeveralMonths_saysItsWindow() {
    assertThat(next.get(next.row("job", "pot on"), "note")).asString().startsWith("Mar–May");
    assertThat(next.get(next.row("job", "trim"), "note")).isEqualTo("Dec–Jan");
  }

  @Test
  void job_heavyPlantsLifted_asksForTwoPeopleAndSaysWhereTo() {
    List<Object> lifting = next.row("job", "lift and pot");

    assertThat(next.get(lifting, "note"))
        .isEqualTo("open mix; to Ground; about 11 to cull; 2 people or trolley");
    assertThat(next.get(lifting, "place")).isEqualTo("Field");
    assertThat(next.get(lifting, "pot")).isEqualTo("15 litre");
    assertThat((Double) next.get(lifting, "one plant")).isGreaterThan(10);
    assertThat((Double) next.get(lifting, "moved"))
        .isCloseTo(
            ((Plants) next.get(lifting, "plants")).whole()
                * (Double) next.get(lifting, "one plant"),
            within(1e-9));
  }

  @Test
  void job_doneAfterItsDate_saysWhenItWasDue() {
    List<List<Object>> wiring =
        later.rows(
            row ->
                later.get(row, "lot").equals("oak-field") && later.get(row, "job").equals("wire"));

    assertThat(wiring).hasSize(1);
    assertThat(later.get(wiring.get(0), "note")).asString().endsWith("was due in Dec 2026");
  }

  @Test
  void winterMoves_areJobsBothWays() {
    List<List<Object>> moves =
        Stream.of(next, later)
            .flatMap(table -> table.rows().stream())
            .filter(row -> next.get(row, "lot").equals("hb-liners"))
            .filter(row -> next.get(row, "job").equals("winter move"))
            .toList();

    assertThat(moves).extracting(row -> next.get(row, "place")).startsWith("Tunnel", "Bench");
    assertThat(moves).extracting(row -> next.get(row, "note")).startsWith("to Bench", "to Tunnel");
  }

  @Test
  void jobs_ofAMonth_followTheOrderOfPlaces() {
    List<String> places = new ArrayList<>(context.inputs().scenario().nursery().places().keySet());
    for (int i = 1; i < later.rows().size(); i++) {
      YearMonth before = (YearMonth) later.get(later.rows().get(i - 1), "month");
      YearMonth month = (YearMonth) later.get(later.rows().get(i), "month");
      assertThat(month).isAfterOrEqualTo(before);
      if (month.equals(before)) {
        assertThat(places.indexOf(later.get(later.rows().get(i), "place")))
            .isGreaterThanOrEqualTo(places.indexOf(later.get(later.rows().get(i - 1), "place")));
      }
    }
  }

  @Test
  void jobs_everyOne_hasAnEmptyBoxToTick() {
    assertThat(next.table().columns().get(next.column("done")).kind()).isEqualTo(Kind.TO_FILL);
    assertThat(next.all("done")).containsOnlyNulls();
  }

  @Test
  void jobs_onAThirdOfAPlant_areNobodysJobs() {
    Nurseries nursery =
        Nurseries.bare()
            .place(
                SmallNursery.place(
                    "yard", PlaceKind.STANDING_GROUND, 20, LiftFrom.GROUND, OptionalDouble.empty()))
            .route(
                "lossy",
                Steps.in("lift", Month.MARCH, 0).minutes(5).build(),
                Steps.in("wire", Month.JUNE, 0).minutes(5).loss(0.7).build(),
                Steps.in("prune", Month.AUGUST, 0).minutes(5).build())
            .lot(Lots.lot("lot").quantity(1).place("yard").plantsPerM2(9).route("lossy").build());

    Sheet sheet = JobsSheet.of(SmallNursery.context(nursery));

    assertThat(Cells.of(sheet, "jobs-next").all("job")).containsExactly("lift");
    assertThat(sheet.sentences()).anyMatch(each -> each.contains("less than a plant"));
  }

  @Test
  void selling_ofSeveralLotsInAMonth_isOneRowWithThePlantsSold() {
    Nurseries nursery =
        Nurseries.bare()
            .seasons(1)
            .selling(0, 3)
            .place(
                SmallNursery.place(
                    "yard", PlaceKind.STANDING_GROUND, 90, LiftFrom.GROUND, OptionalDouble.empty()))
            .sellsAll("one", "any", 20)
            .lot(Lots.lot("a").quantity(40).place("yard").plantsPerM2(9).build())
            .lot(Lots.lot("b").quantity(60).place("yard").plantsPerM2(9).build());

    Sheet sheet = JobsSheet.of(SmallNursery.context(nursery));

    Cells jobs = Cells.of(sheet, "jobs-next");
    assertThat(jobs.all("job")).containsExactly("selling");
    assertThat(jobs.all("lot")).containsExactly("2 lots");
    assertThat(jobs.all("plants")).containsExactly(Plants.of(100, 100));
    assertThat(jobs.sum("hours")).isCloseTo(5, within(1e-9));
    assertThat(sheet.sentences())
        .contains("Selling stands once a month, with the plants sold from all lots.");
  }

  /** 24 of 100 plants sell in a year, two a month. */
  @Test
  void selling_onTheWall_isOfThePlantsSold() {
    Nurseries nursery =
        Nurseries.bare()
            .seasons(1)
            .selling(0, 3)
            .place(
                SmallNursery.place(
                    "yard", PlaceKind.STANDING_GROUND, 90, LiftFrom.GROUND, OptionalDouble.empty()))
            .demand(Nurseries.demandRow("one", "any", OptionalDouble.of(24), 20))
            .lot(Lots.lot("a").quantity(100).place("yard").plantsPerM2(9).build());

    Sheet wall = WallSheet.of(SmallNursery.context(nursery));

    assertThat(wall.tables().get(0).rows().get(0).stream().skip(1).map(Object::toString))
        .hasSize(12)
        .containsOnly("☐ selling: 1 lot, 2 plants");
  }

  @Test
  void jobs_noneSoon_saysSo() {
    Nurseries nursery =
        Nurseries.bare()
            .place(
                SmallNursery.place(
                    "yard", PlaceKind.STANDING_GROUND, 20, LiftFrom.GROUND, OptionalDouble.empty()))
            .route("late", Steps.in("prune", Month.JUNE, 1).minutes(5).build())
            .lot(Lots.lot("lot").place("yard").plantsPerM2(9).route("late").build());

    Sheet quiet = JobsSheet.of(SmallNursery.context(nursery));

    assertThat(quiet.tables()).extracting(Table::name).containsExactly("jobs");
    assertThat(quiet.sentences()).contains("No job is due in the next twelve months.");
    assertThat(Cells.of(quiet, "jobs").all("note")).containsOnlyNulls();
  }

  @Test
  void plants_thatCome_standWithTheRoomAndTheHoursOfThatMonth() {
    Cells arrivals = next;
    List<Object> larch =
        arrivals
            .rows(
                row ->
                    arrivals.get(row, "lot").equals("far larch")
                        && arrivals.get(row, "job").toString().contains("come"))
            .get(0);

    assertThat(arrivals.get(larch, "month")).isEqualTo(YearMonth.of(2026, 12));
    assertThat(arrivals.get(larch, "job")).asString().matches("[0-9,]+ .* come: unload, .*");
    assertThat(arrivals.get(larch, "note")).asString().contains("hours");
    assertThat(arrivals.get(larch, "who")).isNull();
  }

  @Test
  void wire_comesOffEightMonthsAfterItWasPutOn() {
    Nurseries nursery =
        Nurseries.bare()
            .place(
                SmallNursery.place(
                    "yard", PlaceKind.STANDING_GROUND, 20, LiftFrom.GROUND, OptionalDouble.empty()))
            .material(new Material("wire", "m", 50, 12, 0, 0))
            .route(
                "wired", Steps.in("shape", Month.JANUARY, 0).minutes(5).material("wire", 2).build())
            .lot(Lots.lot("lot").quantity(9).place("yard").plantsPerM2(9).route("wired").build());

    Cells due = Cells.of(JobsSheet.of(SmallNursery.context(nursery)), "jobs-next");
    YearMonth wired = (YearMonth) due.get(due.row("job", "shape"), "month");
    List<Object> off = due.row("job", "wire off");

    assertThat(due.get(off, "month")).isEqualTo(wired.plusMonths(8));
    assertThat(((Plants) due.get(off, "plants")).whole()).isEqualTo(9);
    assertThat(due.get(off, "note")).isEqualTo("wired in " + Phrases.PLAIN.month(wired));
  }

  @Test
  void wallSheet_hasEveryJobOfTheNextTwelveMonthsOnce() {
    Sheet wall = WallSheet.of(context);
    long lots =
        wall.tables().get(0).rows().stream()
            .flatMap(List::stream)
            .filter(cell -> cell != null && cell.toString().contains("☐"))
            .flatMap(cell -> cell.toString().lines())
            .mapToLong(line -> Long.parseLong(line.replaceAll(".*: (\\d+) lots?,.*", "$1")))
            .sum();

    assertThat(wall.paper()).isEqualTo(Paper.A3);
    assertThat(lots + DueBeside.of(context).size()).isEqualTo(next.rows().size());
  }
}
