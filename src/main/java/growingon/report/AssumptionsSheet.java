package growingon.report;

import growingon.nursery.Assumption;
import java.util.List;

/** Every value the plan used, and where it came from. */
final class AssumptionsSheet {
  private static final String DEFAULT = "default";

  private AssumptionsSheet() {}

  static Sheet of(Context context) {
    List<Assumption> assumptions = context.inputs().assumptions();
    TableBuilder table =
        TableBuilder.table("assumptions", "Values used")
            .text("table")
            .text("subject")
            .text("what")
            .text("value")
            .text("unit")
            .text("where from")
            .text("mark");
    for (Assumption each : assumptions) {
      table.row(
          each.table(),
          unlessEmpty(each.subject()),
          each.what(),
          each.value(),
          unlessEmpty(each.unit()),
          each.source(),
          isDefault(each) ? DEFAULT : null);
    }
    long defaults = assumptions.stream().filter(AssumptionsSheet::isDefault).count();
    return FilledSheet.of(
        "Assumptions",
        List.of(
            "Defaults: %s of the %s values below, marked in the last column; nobody typed them."
                    .formatted(Labels.whole(defaults), Labels.whole(assumptions.size()))
                + " Filter for them, and type your own where you know better."),
        table.build());
  }

  static boolean isDefault(Assumption assumption) {
    return assumption.source().startsWith(DEFAULT);
  }

  private static String unlessEmpty(String text) {
    return text.isEmpty() ? null : text;
  }
}
