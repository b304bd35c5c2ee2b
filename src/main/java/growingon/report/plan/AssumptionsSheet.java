package growingon.report.plan;

import growingon.nursery.Assumption;
import growingon.nursery.Assumption.Grounds;
import growingon.report.build.FilledSheet;
import growingon.report.build.TableOf;
import growingon.report.figures.Context;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import growingon.report.words.LibraryWords;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Every value the plan used, and where it came from. */
final class AssumptionsSheet {
  private static final String DEFAULT = "default";
  private static final String LIBRARY = "library";
  private static final String USUAL = "usual";

  private final List<Assumption> assumptions;
  private final boolean library;
  private final Phrases say;

  private AssumptionsSheet(List<Assumption> assumptions, Phrases say) {
    this.say = say;
    this.assumptions = assumptions;
    this.library = assumptions.stream().anyMatch(AssumptionsSheet::isFromLibrary);
  }

  static Sheet of(Context context) {
    AssumptionsSheet sheet = new AssumptionsSheet(context.inputs().assumptions(), context.say());
    return FilledSheet.of(
        "Assumptions",
        sheet.sentences(),
        sheet.table(),
        LibraryWords.sources(context.inputs().scenario()));
  }

  private List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    sentences.add(
        "Defaults: %s of the %s values below, marked in the last column; nobody typed them."
                .formatted(counted(AssumptionsSheet::isDefault), say.whole(assumptions.size()))
            + " Filter for them, and type your own where you know better.");
    if (assumptions.stream().anyMatch(Assumption::isUsual)) {
      sentences.add(
          "Usual values, which stand for what your list does not say: %s of them, marked so."
              .formatted(counted(Assumption::isUsual)));
    }
    if (library) {
      sentences.add(
          "From the library of species: %s of them, with the range that holds in 8 of 10 nurseries,"
                  .formatted(counted(AssumptionsSheet::isFromLibrary))
              + " what each rests on, and its sources by the numbers of the table below.");
      sentences.add(say.writing().told(LibraryWords.COMMON_PRACTICE));
      sentences.add(say.writing().told(LibraryWords.PLACE));
    }
    return sentences;
  }

  private String counted(Predicate<Assumption> which) {
    return say.whole(assumptions.stream().filter(which).count());
  }

  /** What a value of the library rests on is shown where there is one. */
  private Table table() {
    TableOf<Assumption> table =
        TableOf.<Assumption>table("assumptions", "Values used")
            .text("table", Assumption::table)
            .text("subject", each -> Rows.text(each.subject()))
            .text("what", Assumption::what)
            .column("value", "", Kind.VALUE, Assumption::value)
            .text("unit", each -> Rows.text(each.unit()));
    if (library) {
      table
          .column(
              "low to high",
              "",
              Kind.VALUE,
              each -> Rows.text(each.grounds().map(Grounds::range).orElse("")))
          .longText(
              "basis",
              each -> Rows.text(say.writing().told(each.grounds().map(Grounds::basis).orElse(""))));
    }
    return table
        .text("where from", Assumption::source)
        .text("mark", AssumptionsSheet::mark)
        .lazily(assumptions);
  }

  private static String mark(Assumption each) {
    return isDefault(each)
        ? DEFAULT
        : isFromLibrary(each) ? LIBRARY : each.isUsual() ? USUAL : null;
  }

  static boolean isDefault(Assumption assumption) {
    return assumption.source().startsWith(DEFAULT);
  }

  static boolean isFromLibrary(Assumption assumption) {
    return assumption.grounds().isPresent();
  }
}
