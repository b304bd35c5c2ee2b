package growingon.report;

import growingon.nursery.Assumption;
import java.util.List;

/** Every value the plan used, and where it came from. */
final class AssumptionsSheet {
  private static final String DEFAULT = "default";

  private AssumptionsSheet() {}

  static Sheet of(Context context) {
    List<Assumption> assumptions = context.inputs().assumptions();
    long defaults = assumptions.stream().filter(AssumptionsSheet::isDefault).count();
    return FilledSheet.of(
        "Assumptions",
        List.of(
            "Defaults: %s of the %s values below, marked in the last column; nobody typed them."
                    .formatted(Labels.whole(defaults), Labels.whole(assumptions.size()))
                + " Filter for them, and type your own where you know better."),
        table(assumptions));
  }

  private static Table table(List<Assumption> assumptions) {
    return new Table(
        "assumptions",
        "Values used",
        List.of(),
        List.of(
            Column.of("table", "table", "", Kind.TEXT),
            Column.of("subject", "subject", "", Kind.TEXT),
            Column.of("what", "what", "", Kind.TEXT),
            Column.of("value", "value", "", Kind.TEXT),
            Column.of("unit", "unit", "", Kind.TEXT),
            Column.of("where_from", "where from", "", Kind.TEXT),
            Column.of("mark", "mark", "", Kind.TEXT)),
        new LazyRows(assumptions.size(), index -> row(assumptions.get(index))));
  }

  private static FixedRow row(Assumption each) {
    return new FixedRow(
        each.table(),
        Rows.text(each.subject()),
        each.what(),
        each.value(),
        Rows.text(each.unit()),
        each.source(),
        isDefault(each) ? DEFAULT : null);
  }

  static boolean isDefault(Assumption assumption) {
    return assumption.source().startsWith(DEFAULT);
  }
}
