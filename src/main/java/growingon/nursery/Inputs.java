package growingon.nursery;

import growingon.nursery.lot.Offer;
import growingon.nursery.record.DaybookLine;
import growingon.nursery.record.OwnReading;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Everything read for a plan.
 *
 * @param scenario what is to be projected
 * @param offers every offer that arrives within the plan, taken or not
 * @param assumptions every value used and where it came from
 * @param stockRows rows of the stock list that were read
 * @param reportFolder the folder that the plan's file names for its report, if it names one
 * @param daybook what happened, by date; lines of one day in the order of the table
 * @param quick the question of the quick sheet, if that is what is planned
 * @param own how a list of the grower's own was read, if the stock comes from one
 */
@RecordBuilder
public record Inputs(
    Scenario scenario,
    List<Offer> offers,
    List<Assumption> assumptions,
    int stockRows,
    Optional<Path> reportFolder,
    List<DaybookLine> daybook,
    Optional<Quick> quick,
    Optional<OwnReading> own)
    implements InputsBuilder.With {
  public Inputs {
    Objects.requireNonNull(scenario);
    offers = List.copyOf(offers);
    assumptions = List.copyOf(assumptions);
    Objects.requireNonNull(reportFolder);
    daybook = List.copyOf(daybook);
    Objects.requireNonNull(quick);
    Objects.requireNonNull(own);
  }

  /** Inputs whose stock is typed as a table of ours. */
  public Inputs(
      Scenario scenario,
      List<Offer> offers,
      List<Assumption> assumptions,
      int stockRows,
      Optional<Path> reportFolder,
      List<DaybookLine> daybook,
      Optional<Quick> quick) {
    this(scenario, offers, assumptions, stockRows, reportFolder, daybook, quick, Optional.empty());
  }

  /** Inputs of a plan that names no folder for its report. */
  public Inputs(
      Scenario scenario, List<Offer> offers, List<Assumption> assumptions, int stockRows) {
    this(scenario, offers, assumptions, stockRows, Optional.empty(), List.of(), Optional.empty());
  }

  /** The same inputs with another plan. */
  public Inputs withPlan(Plan plan) {
    return withScenario(scenario.withPlan(plan));
  }

  /** The same inputs with other lots, and with more written down of what happened. */
  public Inputs withRecords(Scenario other, List<DaybookLine> lines) {
    return with().scenario(other).daybook(lines).build();
  }

  /**
   * The same inputs, whose stock comes from a list of the grower's own.
   *
   * @param marked its values, of which the usual ones are said to be so
   */
  public Inputs withOwn(OwnReading reading, List<Assumption> marked) {
    return with().assumptions(marked).own(Optional.of(reading)).build();
  }
}
