package growingon.report.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.money.CashItem;
import growingon.nursery.supply.Mix;
import growingon.project.history.Use;
import growingon.project.need.Supplies;
import growingon.report.Cells;
import growingon.report.SmallNursery;
import growingon.report.figures.Context;
import growingon.report.model.Sheet;
import growingon.report.plan.supply.MaterialsSheet;
import growingon.report.plan.supply.PotsSheet;
import growingon.report.plan.supply.SubstrateSheet;
import growingon.report.text.Plants;
import growingon.report.text.Shown;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SupplySheetsTest {
  private final Context context = SmallNursery.context();

  private Sheet sheet(String name) {
    return switch (name) {
      case "pots" -> PotsSheet.of(context);
      case "substrate" -> SubstrateSheet.of(context);
      default -> MaterialsSheet.of(context);
    };
  }

  @ParameterizedTest
  @CsvSource({"pots, POTS", "substrate, SUBSTRATE", "materials, MATERIALS"})
  void cost_bySeasonAndByMonth_isTheCashLine(String name, CashItem line) {
    double paid = -context.accounts().cash().total(line);

    assertThat(paid).isGreaterThan(0);
    assertThat(Cells.of(sheet(name), name).sum("cost")).isCloseTo(paid, within(1e-9));
    assertThat(Cells.of(sheet(name), name + "-by-month").sum("cost")).isCloseTo(paid, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"pots, packs bought", "substrate, bags bought", "materials, packs bought"})
  void row_onHandAndComeBackAndBought_lessUsedIsLeft(String name, String bought) {
    for (String table : List.of(name, name + "-by-month")) {
      Cells cells = Cells.of(sheet(name), table);
      assertThat(cells.rows()).isNotEmpty();
      for (List<Object> row : cells.rows()) {
        for (ToDoubleFunction<Object> number : NUMBERS) {
          double back =
              "substrate".equals(name) ? 0 : number.applyAsDouble(cells.get(row, "come back"));
          double packs = ((Number) cells.get(row, bought)).doubleValue();
          double left =
              number.applyAsDouble(cells.get(row, "on hand before"))
                  + back
                  + packs * ((Number) cells.get(row, "in each")).doubleValue()
                  - number.applyAsDouble(cells.get(row, "used"));
          assertThat(left)
              .isCloseTo(number.applyAsDouble(cells.get(row, "left")), within(1e-9))
              .isGreaterThan(-1e-9);
        }
      }
    }
  }

  /** In full precision, and as it is printed. */
  private static final List<ToDoubleFunction<Object>> NUMBERS =
      List.of(SupplySheetsTest::exact, SupplySheetsTest::shown);

  private static double exact(Object cell) {
    return cell instanceof Plants plants ? plants.exact() : ((Shown) cell).exact();
  }

  private static double shown(Object cell) {
    return cell instanceof Plants plants ? plants.whole() : ((Shown) cell).shown();
  }

  @Test
  void potsAndMetres_asTheyArePrinted_areWhole() {
    for (String name : List.of("pots", "substrate", "materials")) {
      Cells cells = Cells.of(sheet(name), name);
      assertThat(cells.all("used")).allMatch(cell -> shown(cell) == Math.rint(shown(cell)));
      assertThat(cells.all("used")).anyMatch(cell -> exact(cell) != Math.rint(exact(cell)));
    }
  }

  @Test
  void mixes_litresSharedOutByParts_areTheComponentsUsed() {
    Sheet sheet = SubstrateSheet.of(context);
    Cells mixes = Cells.of(sheet, "substrate-mixes");
    for (Supplies.Item item : context.accounts().supplies().used(Use.Kind.COMPONENT)) {
      double litres = 0;
      for (List<Object> row : mixes.rows()) {
        Mix mix = context.inputs().scenario().nursery().mixes().get(mixes.get(row, "mix"));
        litres += (Double) mixes.get(row, "litres") * mix.share(item.name());
      }
      assertThat(Arrays.stream(item.used()).sum()).isCloseTo(litres, within(1e-9));
    }
  }

  @Test
  void mixes_sharesOfEach_sumToOne() {
    Cells parts = Cells.of(SubstrateSheet.of(context), "substrate-parts");
    List<List<Object>> open = parts.rows(row -> parts.get(row, "mix").equals("open mix"));

    assertThat(open)
        .extracting(row -> parts.get(row, "component"))
        .containsExactly("bark", "pumice");
    assertThat(open).extracting(row -> parts.get(row, "share")).containsExactly(0.6, 0.4);
  }

  @Test
  void wire_fortyPercentOfIt_comesBackAYearLater() {
    Cells wire = Cells.of(MaterialsSheet.of(context), "materials");
    double used = exact(wire.get(row(wire, "2027/28"), "used"));

    assertThat(used).isGreaterThan(0);
    assertThat(exact(wire.get(row(wire, "2028/29"), "come back")))
        .isCloseTo(0.4 * used, within(1e-9));
  }

  private static List<Object> row(Cells cells, String season) {
    return cells.rows(row -> row.contains("wire") && row.contains(season)).get(0);
  }
}
