package growingon.report.edition;

import growingon.nursery.Inputs;
import growingon.nursery.Nursery;
import growingon.plan.Planned;
import growingon.report.build.FilledSheet;
import growingon.report.build.TableOf;
import growingon.report.edition.Availability.Line;
import growingon.report.model.Answer;
import growingon.report.model.Kind;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Cautions;
import growingon.report.text.Phrases;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.lang3.StringUtils;

/**
 * What a customer sees: the plants that stand and can be had this season and the next, a page for
 * each grade ladder, in numbers rounded down to fives, with a column to order in.
 */
final class CustomerEdition {
  /** A customer is not told the plan's name. */
  static final String TITLE = "Availability list";

  private final Nursery nursery;
  private final boolean prices;
  private final String currency;
  private final YearMonth first;
  private final YearMonth until;
  private final List<Line> lines;
  private final Phrases say;

  private CustomerEdition(Inputs seen, Availability availability, boolean prices) {
    this.say = Phrases.of(seen.scenario());
    this.nursery = seen.scenario().nursery();
    this.prices = prices;
    this.currency = nursery.settings().currency();
    this.first = seen.scenario().plan().firstMonth();
    this.until = availability.until();
    this.lines = availability.lines();
  }

  static Report of(Planned seen, boolean prices) {
    Availability availability = new Availability(seen.inputs().scenario());
    return new CustomerEdition(seen.inputs(), availability, prices).report();
  }

  private List<String> leftOut() {
    List<String> out = new ArrayList<>();
    out.add("plants that are kept, held back, reserved or not yet of a grade for sale");
    out.add("plants that are not in the nursery yet");
    out.add("exact numbers: they are rounded down to fives, and fewer than five are not listed");
    if (!prices) {
      out.add("prices");
    }
    out.add("everything else of the nursery's plan");
    return out;
  }

  private Report report() {
    List<String> told = List.of(summary(), valid());
    List<String> sentences = new ArrayList<>(told);
    sentences.add("Left out of this edition: " + String.join("; ", leftOut()) + ".");
    List<Sheet> sheets = new ArrayList<>();
    sheets.add(new Sheet(TITLE, sentences, List.of(), List.of(), true));
    byLadder().forEach((ladder, of) -> sheets.add(page(ladder, of)));
    sheets.add(FilledSheet.of("Cautions", List.of(), cautions()));
    return Report.of(
            TITLE,
            nursery.settings().name(),
            prices ? say : new Phrases("", say.writing()),
            first.toString())
        .sheets(sheets)
        .headlines(sentences)
        .answers(List.of(new Answer("What is for sale", told, List.of(), List.of())))
        .leftOut(leftOut())
        .build();
  }

  private Map<String, List<Line>> byLadder() {
    Map<String, List<Line>> byLadder = new LinkedHashMap<>();
    lines.forEach(
        line ->
            byLadder.computeIfAbsent(line.key().ladder(), ladder -> new ArrayList<>()).add(line));
    return byLadder;
  }

  private Sheet page(String ladder, List<Line> of) {
    return new Sheet(
        StringUtils.capitalize(ladder),
        List.of(valid()),
        List.of(table(ladder, of)),
        List.of(),
        true);
  }

  private Table table(String ladder, List<Line> of) {
    String name = "availability-" + ladder.replaceAll("[^\\p{L}\\p{N}]+", "-");
    TableOf<Line> table =
        TableOf.<Line>table(name, StringUtils.capitalize(ladder))
            .note(
                "Size: trunk above the root flare; a plant may be thicker where a higher grade asks"
                    + " for longer training. Litres: of the pot. First in: the month in which the first of"
                    + " them stands, where fewer than five can be had now. More: besides those that can be had"
                    + " now, from the month on in which nine tenths of them stand."
                    + (prices ? " Price: each, without VAT." : ""))
            .text("species", line -> line.key().species())
            .text("grade", line -> line.key().grade())
            .text("size", line -> line.key().size())
            .column("litres", "", Kind.COUNT, line -> unlessNil((int) line.key().litres()))
            .text("quality", line -> line.key().quality().toString())
            .column("now", "", Kind.COUNT, line -> unlessNil(line.now()))
            .month("first in", line -> line.first().orElse(null))
            .column("more", "", Kind.COUNT, line -> unlessNil(line.more()))
            .month("from", line -> line.from().orElse(null));
    if (prices) {
      table.column("list price", currency, Kind.MONEY_EACH, line -> line.key().price());
    }
    return table.text("wanted", line -> null).wide(WANTED_WIDE).of(of);
  }

  private static Integer unlessNil(int number) {
    return number > 0 ? (Integer) number : null;
  }

  private static final int WANTED_WIDE = 9;

  private String valid() {
    return "As of %s; valid until the end of %s or while stocks last."
        .formatted(say.month(first), say.month(until));
  }

  private String summary() {
    if (lines.isEmpty()) {
      return "Nothing that stands is for sale this season or the next.";
    }
    int now = lines.stream().mapToInt(Line::now).sum();
    int more = lines.stream().mapToInt(Line::more).sum();
    long species = lines.stream().map(line -> line.key().species()).distinct().count();
    return "For sale, of %s: %s now, and at least %s more until the end of %s."
        .formatted(
            say.counted((int) species, "species", "species"),
            say.plants(now),
            say.whole(more),
            say.month(until));
  }

  private static Table cautions() {
    return TableOf.<List<String>>table("cautions", "Cautions")
        .text("about", caution -> caution.get(0))
        .longText("caution", caution -> caution.get(1))
        .of(
            List.of(
                List.of("forecast", Cautions.NO_PROMISE),
                List.of("poisonous plants", Cautions.POISON)));
  }
}
