package growingon.write.text;

import growingon.report.fit.SpeciesEdit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Pieces of a grower's text that become others, and how a proposal writes numbers into them. */
final class ProposalEdits {
  private static final int DIGITS = 3;

  private ProposalEdits() {}

  /** A number as it is proposed: three digits that count. */
  static String number(double value) {
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(DIGITS)).stripTrailingZeros();
    return rounded.toPlainString();
  }

  /** A piece of a text that becomes another. */
  record Change(int from, int to, String text) {}

  static Map<String, List<SpeciesEdit>> bySpecies(List<SpeciesEdit> edits) {
    Map<String, List<SpeciesEdit>> bySpecies = new LinkedHashMap<>();
    edits.forEach(
        edit -> bySpecies.computeIfAbsent(edit.species(), each -> new ArrayList<>()).add(edit));
    return bySpecies;
  }

  /** As it was typed, not rounded. */
  static String plain(double value) {
    BigDecimal exact = new BigDecimal(value).round(new MathContext(12)).stripTrailingZeros();
    return exact.toPlainString();
  }

  static String key(String name) {
    return name.strip().replaceAll("\\s+", " ");
  }

  static String applied(String text, List<Change> changes) {
    StringBuilder edited = new StringBuilder(text);
    // From the end, so that what stands before keeps its place; comments before numbers of a line.
    changes.stream()
        .sorted(Comparator.comparingInt(Change::from).reversed())
        .forEach(each -> edited.replace(each.from, each.to, each.text));
    return edited.toString();
  }
}
