package growingon.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.money.CashItem;
import growingon.nursery.Mix;
import growingon.project.Supplies;
import growingon.project.Use;
import java.util.Arrays;
import java.util.List;
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
        double back = "substrate".equals(name) ? 0 : number(cells.get(row, "come back"));
        double left =
            number(cells.get(row, "on hand before"))
                + back
                + number(cells.get(row, bought)) * number(cells.get(row, "in each"))
                - number(cells.get(row, "used"));
        assertThat(left).isCloseTo(number(cells.get(row, "left")), within(1e-9));
      }
    }
  }

  private static double number(Object cell) {
    return cell instanceof Plants plants ? plants.exact() : ((Number) cell).doubleValue();
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
    double used = number(wire.get(row(wire, "2027/28"), "used"));

    assertThat(used).isGreaterThan(0);
    assertThat(number(wire.get(row(wire, "2028/29"), "come back")))
        .isCloseTo(0.4 * used, within(1e-9));
  }

  private static List<Object> row(Cells cells, String season) {
    return cells.rows(row -> row.contains("wire") && row.contains(season)).get(0);
  }
}
