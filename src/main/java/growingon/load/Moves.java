package growingon.load;

import growingon.load.cell.Cell;
import growingon.load.cell.Findings;
import growingon.load.file.NurseryFiles;
import growingon.load.list.OwnNursery;
import growingon.load.own.heading.ListKind;
import growingon.load.own.question.Fill;
import growingon.load.own.question.Moved;
import growingon.load.settings.PlanReader;
import growingon.load.source.Answer;
import growingon.nursery.Inputs;
import growingon.nursery.Scenario;
import growingon.problem.Where;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * How far answers to what a list does not say move what its plan is worth: the nursery is laid out
 * as it would be with a low and with a high usual answer, all else as it is.
 */
final class Moves {
  private static final Where WHERE = Where.file("to fill");

  private final OwnNursery own;
  private final NurseryFiles usual;
  private final Scenario planned;
  private final ToDoubleFunction<Scenario> worth;

  private Moves(
      OwnNursery own, NurseryFiles usual, Scenario planned, ToDoubleFunction<Scenario> worth) {
    this.own = own;
    this.usual = usual;
    this.planned = planned;
    this.worth = worth;
  }

  /**
   * Tells a nursery what its cells to fill move, where a plan can be valued; nothing where the list
   * has errors, so that there is no plan.
   */
  static void tell(OwnNursery own, LoadOptions options) {
    if (options.worth().isPresent() && !own.isTold()) {
      NurseryFiles usual = own.unheard().alone(WHERE);
      reader(usual, own, new Findings())
          .read(own.name(), Optional.empty(), options.today())
          .inputs()
          .map(planned -> new Moves(own, usual, planned.scenario(), options.worth().get()))
          .ifPresent(moves -> own.tell(moves.moved()));
    }
  }

  private static NurseryReader reader(NurseryFiles files, OwnNursery own, Findings unheard) {
    PlanReader plan = PlanReader.none(unheard);
    plan.readHorizon(own::firstMonth);
    return new NurseryReader(files, plan, unheard);
  }

  /**
   * How far a cell moves a plan.
   *
   * @param worth of the plan, between the low and the high answer
   */
  private record Move(Fill fill, double worth) {}

  private Moved moved() {
    List<Move> moves =
        own.fills().parallelStream()
            .filter(fill -> fill.between().isPresent())
            .flatMap(fill -> move(fill).stream())
            .sorted(Comparator.comparing(Move::worth).reversed())
            .toList();
    Map<Moved.Of, String> told = new LinkedHashMap<>();
    moves.forEach(move -> told.put(Moved.Of.of(move.fill), words(move)));
    return new Moved(told);
  }

  private String words(Move move) {
    Fill.Between between = move.fill.between().orElseThrow();
    String much = own.writing().threeFigures(move.worth);
    return "%s (from %s to %s)"
        .formatted(
            much.equals("0") ? "nothing" : "present value by " + much,
            written(between.low()),
            written(between.high()));
  }

  /** As the grower writes numbers. */
  private String written(String answer) {
    return Character.isDigit(answer.charAt(0))
        ? own.writing().number(Double.parseDouble(answer))
        : answer;
  }

  /** Empty where an answer cannot be. */
  private Optional<Move> move(Fill fill) {
    Fill.Between between = fill.between().orElseThrow();
    OptionalDouble low = worth(answer(fill, between.low()));
    OptionalDouble high = worth(answer(fill, between.high()));
    return low.isPresent() && high.isPresent()
        ? Optional.of(new Move(fill, Math.abs(high.getAsDouble() - low.getAsDouble())))
        : Optional.empty();
  }

  private static Answer answer(Fill fill, String typed) {
    return new Answer(
        fill.table(), fill.row(), fill.column(), Cell.ofText(typed), fill.usual(), WHERE);
  }

  private OptionalDouble worth(Answer answer) {
    Optional<Scenario> answered = answer.isOf(ListKind.STOCK) ? lots(answer) : around(answer);
    return answered.isPresent()
        ? OptionalDouble.of(worth.applyAsDouble(answered.get()))
        : OptionalDouble.empty();
  }

  /** With other lots. */
  private Optional<Scenario> lots(Answer answer) {
    return reader(own.answered(answer).alone(WHERE), own, new Findings())
        .read(own.name(), Optional.empty(), own.firstMonth().atDay(1))
        .inputs()
        .map(Inputs::scenario);
  }

  /** The same lots with something else around them. */
  private Optional<Scenario> around(Answer answer) {
    Findings unheard = new Findings();
    return reader(own.answered(answer, usual, unheard), own, unheard).around().map(planned::in);
  }
}
