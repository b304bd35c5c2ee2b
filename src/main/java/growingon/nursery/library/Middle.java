package growingon.nursery.library;

import growingon.nursery.species.Habit;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * The middle of several rows of the library: the geometric mean of their growth, the losses of the
 * middle row, and the middle of each other figure; of two middle ones the lower.
 */
final class Middle {
  private final List<Taxon> rows;

  private Middle(List<Taxon> rows) {
    this.rows = rows;
  }

  /** Of a genus, or of the rows that a word may mean: measured rows first, else all. */
  static Taxon ofGenus(List<Taxon> rows, String name) {
    List<Taxon> measured = rows.stream().filter(each -> each.basis().isMeasured()).toList();
    Middle middle = new Middle(measured.isEmpty() ? rows : measured);
    Taxon losses = middle.byLosses();
    return middle.taxon(name, middle.weakest().orWeaker(Basis.GENUS), losses, losses.caution());
  }

  /** Of all rows of a kind. */
  static Taxon ofKind(List<Taxon> rows, Habit habit) {
    Middle middle = new Middle(rows);
    String name = "all " + habit + " rows";
    return middle.taxon(name, Basis.KIND, middle.byLosses(), "");
  }

  private Taxon taxon(String name, Basis basis, Taxon losses, String caution) {
    return new Taxon(
        name,
        name,
        List.of(),
        List.of(),
        losses.habit(),
        geometricMean(),
        basis,
        0,
        middle(Taxon::mostMm),
        middle(Taxon::vigourSpread),
        middle(Taxon::yearSpread),
        losses.firstYearLoss(),
        losses.laterLoss(),
        losses.transplanting(),
        losses.propagation(),
        losses.winterProtection(),
        caution,
        rows.stream().flatMap(each -> each.growthSources().stream()).distinct().sorted().toList(),
        losses.lossSources());
  }

  private double geometricMean() {
    return Math.exp(
        rows.stream().mapToDouble(each -> Math.log(each.fieldMm())).average().orElseThrow());
  }

  private Basis weakest() {
    return rows.stream().map(Taxon::basis).reduce(Basis::orWeaker).orElseThrow();
  }

  private Taxon byLosses() {
    return rows.stream()
        .sorted(Comparator.comparing(Taxon::firstYearLoss).thenComparing(Taxon::laterLoss))
        .skip((rows.size() - 1) / 2)
        .findFirst()
        .orElseThrow();
  }

  private double middle(Function<Taxon, Double> figure) {
    return rows.stream().map(figure).sorted().skip((rows.size() - 1) / 2).findFirst().orElseThrow();
  }
}
