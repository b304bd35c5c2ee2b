package growingon.report.plan;

import growingon.nursery.Nursery;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.nursery.place.LiftFrom;
import growingon.nursery.species.Species;
import growingon.problem.Problem;
import growingon.project.pot.Lifting;
import growingon.project.pot.Weight;
import growingon.report.build.FilledSheet;
import growingon.report.build.TableOf;
import growingon.report.figures.Context;
import growingon.report.model.Rows;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Cautions;
import growingon.report.text.Phrases;
import java.time.format.TextStyle;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What was found in the input, how the plan is to be read, cautions, and sources of figures. */
public final class NotesSheet {
  /** Name of the table that says how to read a plan. */
  public static final String HOW_TO_READ = "how-to-read";

  /** Name of the table of cautions. */
  public static final String CAUTIONS = "cautions";

  private final Scenario scenario;
  private final Nursery nursery;
  private final List<Problem> problems;
  private final Phrases say;

  private NotesSheet(Context context) {
    this.say = context.say();
    this.scenario = context.inputs().scenario();
    this.nursery = scenario.nursery();
    this.problems = context.problems();
  }

  public static Sheet of(Context context) {
    NotesSheet sheet = new NotesSheet(context);
    return FilledSheet.upright(
        "Notes",
        List.of(Cautions.NO_PROMISE + " " + Cautions.NO_ADVICE),
        sheet.problems(),
        sheet.reading(),
        cautions(),
        sheet.healthNotes(),
        sheet.sources());
  }

  private Table problems() {
    return TableOf.<Problem>table("problems", "What was found while reading and planning")
        .note("Warnings want a look; notices say what was assumed or worked out.")
        .text("severity", each -> each.severity().toString())
        .longText("what", Problem::what)
        .text("where", each -> Rows.text(each.where().toString()))
        .longText("what to do", each -> Rows.text(each.remedy()))
        .of(problems.stream().sorted(Comparator.comparing(Problem::severity)).toList());
  }

  /** A line of a table of words. */
  private record Line(String about, String words) {}

  private Table reading() {
    return TableOf.<Line>table(HOW_TO_READ, "How to read this plan")
        .text("about", Line::about)
        .longText("what it means", Line::words)
        .of(Stream.of(aboutThePlan(), aboutPlants(), aboutLimits()).flatMap(List::stream).toList());
  }

  private List<Line> aboutThePlan() {
    String start = nursery.settings().seasonStart().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    return List.of(
        new Line(
            "plants",
            "Numbers of plants are expected ones: what is left on average when the assumed shares"
                + " die, thicken and sell. They are shown whole and rounded so that each column adds"
                + " up; the same number on two sheets can differ by a plant. figures.json has full"
                + " precision."),
        new Line(
            "the plan's line",
            "The plan runs once with expected values. That is not the mean of all that may happen:"
                + " where demand is the limit, good years cannot make up for bad ones, and"
                + " the mean lies below the plan's line."),
        new Line(
            "season",
            "Twelve months from "
                + start
                + ". The plan starts in "
                + say.month(scenario.plan().firstMonth())
                + "; a part season counts as the first and says from which month it runs. What was"
                + " wanted before the plan is not caught up."),
        new Line(
            "a month",
            "In each month plants arrive, steps are done, space and weight are read, plants grow,"
                + " some die, and what is ready is sold, in this order."));
  }

  private List<Line> aboutPlants() {
    return List.of(
        new Line(
            "kept",
            "Plants of a lot that are never for sale: they take space, work and losses, and are"
                + " never culled or sold."),
        new Line(
            "held back",
            "A share of a lot that is not sold below the grade named in the stock list or offer."),
        new Line(
            "waiting",
            "A plant thick enough for a higher grade that lacks at most that grade's wait months of"
                + " training is not sold below it meanwhile."),
        new Line(
            "representative plants",
            "Each lot is followed as %d equal slices that differ in trunk, vigour and quality (K in"
                    .formatted(scenario.plan().slices())
                + " plan.json)."));
  }

  private static List<Line> aboutLimits() {
    return List.of(
        new Line(
            "space",
            "Nothing is left out because it does not fit: an overfull place says by how much, and"
                + " the plan goes on as if the room were found."),
        new Line(
            "hours",
            "Minutes in routes are those of one person. Potting, lifting and moving count for two"
                + " people where a plant weighs more than %.0f kg from a bench or %.0f kg from the"
                    .formatted(Lifting.firstKg(LiftFrom.BENCH), Lifting.firstKg(LiftFrom.GROUND))
                + " ground. Hours are shown as needed, even where they are not there."),
        new Line(
            "money",
            "All amounts are in prices of the plan's first month and without VAT; the discount rate"
                + " is a real one. What was spent on the stock before the plan is in the lots'"
                + " accounts only, in no cash figure."),
        new Line("forecast", Cautions.NO_PROMISE + " " + Cautions.NO_ADVICE));
  }

  private static Table cautions() {
    return TableOf.<List<String>>table(CAUTIONS, "Cautions")
        .text("about", caution -> caution.get(0))
        .longText("caution", caution -> caution.get(1))
        .of(Cautions.all());
  }

  private Table healthNotes() {
    Set<String> there = scenario.lots().stream().map(Lot::species).collect(Collectors.toSet());
    return TableOf.<Species>table("plant-health", "Plant health notes of the species in this plan")
        .text("species", Species::name)
        .longText("note", Species::healthNote)
        .of(
            nursery.species().values().stream()
                .filter(each -> there.contains(each.name()) && !each.healthNote().isEmpty())
                .toList());
  }

  /** A built-in figure, and where it comes from. */
  private record Figure(String figure, String source, String value) {}

  private Table sources() {
    return TableOf.<Figure>table("sources", "Where built-in figures come from")
        .note("Everything else was typed, is a default or is from the library: see Assumptions.")
        .text("figure", Figure::figure)
        .longText("source", Figure::source)
        .text("value", Figure::value)
        .of(figures());
  }

  private List<Figure> figures() {
    return List.of(
        new Figure(
            "lifting from a bench",
            "HSE guidance INDG143, close to the body between elbow and knuckle, men and women; read"
                + " in secondary copies.",
            "25 and 16 kg"),
        new Figure(
            "lifting from the ground",
            "The same guidance, at floor level; from memory.",
            "10 and 7 kg"),
        new Figure(
            "lifted ball",
            "Wet field soil with roots; from memory.",
            say.number(Weight.LIFTED_KG_PER_LITRE) + " kg a litre"),
        new Figure(
            "wood", "Green wood weighs about as much as water; from memory.", "1 kg a litre"),
        new Figure(
            "pot volume",
            "Solid geometry: frustum of a cone, or prismatoid for square and rectangular pots.",
            "by its measures"),
        new Figure(
            "offset rows",
            "Geometry: rows stand √3/2 apart. A bench of a stated depth holds whole rows only.",
            "15 % more plants"),
        new Figure(
            "trunk from girth",
            "Geometry, times the setting girth base factor, because the flare is thicker than the"
                + " stem at the height of the girth.",
            "girth / π"),
        new Figure(
            "material that comes back",
            "Our choice: wire put on in one year is taken off in the next.",
            "after 12 months"));
  }
}
