package growingon.report.plan.space;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.report.Cells;
import growingon.report.SmallNursery;
import growingon.report.figures.Context;
import growingon.report.model.Sheet;
import growingon.report.text.Cautions;
import java.util.List;
import org.junit.jupiter.api.Test;

class WeightsSheetTest {
  private final Context context = SmallNursery.context();
  private final Sheet sheet = WeightsSheet.of(context);
  private final Cells weights = Cells.of(sheet, "weights");
  private final Cells loads = Cells.of(sheet, "loads");

  @Test
  void tree_fifteenLitresWithLiftedBallOnTheGround_isFlagged() {
    List<Object> oak = weights.row("lot", "oak-field");

    assertThat(weights.get(oak, "pot")).isEqualTo("15 litre");
    assertThat(weights.get(oak, "lifted from")).isEqualTo("ground");
    assertThat((Double) weights.get(oak, "lifted ball")).isGreaterThan(0);
    assertThat(weights.get(oak, "lifting")).isEqualTo("two people or a trolley");
  }

  @Test
  void liner_inTheSameLitresOnABench_isNotFlagged() {
    List<Object> larch = weights.row("lot", "larch-bench");

    assertThat(weights.get(larch, "pot")).isEqualTo("15 litre");
    assertThat(weights.get(larch, "lifted from")).isEqualTo("bench");
    assertThat(weights.get(larch, "lifting")).isNull();
  }

  @Test
  void parts_ofEveryPlant_addUpToItsWeight() {
    assertThat(weights.rows()).isNotEmpty();
    for (List<Object> row : weights.rows()) {
      double parts = 0;
      for (String part : List.of("mix", "lifted ball", "empty pot", "wood")) {
        parts += (Double) weights.get(row, part);
      }
      assertThat((Double) weights.get(row, "one plant")).isCloseTo(parts, within(1e-9));
    }
  }

  @Test
  void lot_thatGrowsHeavier_isShownNowAndAtItsHeaviest() {
    List<List<Object>> liners = weights.rows(row -> weights.get(row, "lot").equals("larch-big"));

    assertThat(liners)
        .extracting(row -> weights.get(row, "when"))
        .containsExactly("now", "heaviest");
    assertThat((Double) weights.get(liners.get(1), "one plant"))
        .isGreaterThan((Double) weights.get(liners.get(0), "one plant"));
  }

  @Test
  void lot_bought_isShownOnArrival() {
    List<List<Object>> bought = weights.rows(row -> weights.get(row, "lot").equals("far larch"));

    assertThat(weights.get(bought.get(0), "when")).isEqualTo("on arrival");
  }

  @Test
  void load_overTheLimit_isSaid_andWithoutALimitSaidToo() {
    List<Object> bench = loads.row("place", "Bench");
    List<Object> ground = loads.row("place", "Ground");

    assertThat(loads.get(bench, "limit")).isEqualTo("60 kg/m²");
    assertThat((String) loads.get(bench, "note")).startsWith("over the limit ");
    assertThat(loads.get(ground, "limit")).isEqualTo("no limit given");
    assertThat(loads.get(ground, "note")).isNull();
  }

  @Test
  void load_heaviestLot_isAtLeastTheMean() {
    for (List<Object> row : loads.rows()) {
      assertThat((Double) loads.get(row, "load there"))
          .isGreaterThanOrEqualTo((Double) loads.get(row, "mean load") - 1e-9);
    }
  }

  @Test
  void sheet_saysThatLiftingWeightsAreScreeningValues() {
    assertThat(sheet.sentences()).contains(Cautions.LIFTING, Cautions.BENCH_LOADS);
  }
}
