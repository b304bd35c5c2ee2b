package growingon.review;

import growingon.nursery.Inputs;
import growingon.nursery.Scenario;
import growingon.nursery.market.Quality;
import growingon.nursery.record.DaybookLine;
import growingon.nursery.record.DaybookLine.What;
import growingon.problem.Where;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A daybook to be written in a test; a line is changed by what follows it. */
public final class Diary {
  private final List<Entry> entries = new ArrayList<>();

  private static final class Entry {
    LocalDate date;
    String lot;
    What what;
    OptionalDouble quantity = OptionalDouble.empty();
    Optional<String> toLot = Optional.empty();
    Optional<String> grade = Optional.empty();
    Optional<Quality> quality = Optional.empty();
    OptionalDouble trunk = OptionalDouble.empty();
    OptionalDouble spread = OptionalDouble.empty();
    OptionalDouble amount = OptionalDouble.empty();
    OptionalDouble hours = OptionalDouble.empty();
    String customer = "";
    String reason = "";
    int row;
  }

  private Entry last() {
    return entries.get(entries.size() - 1);
  }

  /** A line without a quantity. */
  Diary on(String date, String lot, What what) {
    Entry entry = new Entry();
    entry.date = LocalDate.parse(date);
    entry.lot = lot;
    entry.what = what;
    entry.row = entries.size() + 2;
    entries.add(entry);
    return this;
  }

  Diary on(String date, String lot, What what, double quantity) {
    on(date, lot, what);
    last().quantity = OptionalDouble.of(quantity);
    return this;
  }

  Diary to(String lot) {
    last().toLot = Optional.of(lot);
    return this;
  }

  Diary grade(String grade) {
    last().grade = Optional.of(grade);
    return this;
  }

  Diary quality(Quality quality) {
    last().quality = Optional.of(quality);
    return this;
  }

  Diary trunks(double mean, double spread) {
    last().trunk = OptionalDouble.of(mean);
    last().spread = OptionalDouble.of(spread);
    return this;
  }

  Diary amount(double amount) {
    last().amount = OptionalDouble.of(amount);
    return this;
  }

  Diary hours(double hours) {
    last().hours = OptionalDouble.of(hours);
    return this;
  }

  Diary customer(String code) {
    last().customer = code;
    return this;
  }

  Diary because(String reason) {
    last().reason = reason;
    return this;
  }

  /** The lines by date, as the loader gives them. */
  List<DaybookLine> lines() {
    return entries.stream()
        .map(Diary::line)
        .sorted(Comparator.comparing(DaybookLine::date))
        .toList();
  }

  private static DaybookLine line(Entry entry) {
    return DaybookLine.of(
            entry.date, entry.lot, entry.what, new Where("daybook.csv", "", entry.row, ""))
        .quantity(entry.quantity)
        .toLot(entry.toLot)
        .grade(entry.grade)
        .quality(entry.quality)
        .trunkMm(entry.trunk)
        .trunkSpread(entry.spread)
        .amount(entry.amount)
        .hours(entry.hours)
        .customer(entry.customer)
        .reason(entry.reason)
        .build();
  }

  /** Inputs of a scenario with these lines. */
  public Inputs of(Scenario scenario) {
    return inputs(scenario, lines());
  }

  static Inputs inputs(Scenario scenario, List<DaybookLine> lines) {
    return new Inputs(scenario, List.of(), List.of(), 0, Optional.empty(), lines, Optional.empty());
  }

  /** As a property that fails shows it. */
  @Override
  public String toString() {
    return lines().stream()
        .map(
            line ->
                line.date()
                    + " "
                    + line.lot()
                    + " "
                    + line.what()
                    + " "
                    + line.quantity()
                    + line.toLot().map(lot -> " to " + lot).orElse(""))
        .toList()
        .toString();
  }
}
