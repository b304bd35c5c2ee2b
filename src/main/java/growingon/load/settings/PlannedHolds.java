package growingon.load.settings;

import growingon.load.cell.Cell.Fields;
import growingon.load.cell.CellFault;
import growingon.load.cell.Findings;
import growingon.load.row.As;
import growingon.load.row.Names;
import growingon.load.row.Row;
import growingon.load.source.JsonShape;
import growingon.load.table.lot.Definitions;
import growingon.load.table.lot.LotCells;
import growingon.load.table.market.GradesTable;
import growingon.nursery.Plan.PlannedHold;
import growingon.nursery.lot.Hold;
import growingon.nursery.lot.Hold.Which;
import growingon.nursery.lot.Lot;
import growingon.problem.Where;
import growingon.problem.advice.PlanAdvice;
import growingon.problem.advice.ValueAdvice;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What a plan says is held of its lots: {@code "hold": { "Hornbeam 2018": { "grade": "shaped",
 * "share %": 100 } }}. A share of 0 holds none and needs no grade.
 */
final class PlannedHolds {
  private final Map<String, Lot> lots;
  private final Names names;
  private final Definitions known;
  private final Findings findings;
  private final Map<String, PlannedHold> holds = new LinkedHashMap<>();

  /**
   * Reads holds.
   *
   * @param lots of the stock list, and those that orders of offers would become, by name
   * @param names of all of them, also of faulty ones
   */
  PlannedHolds(Map<String, Lot> lots, Names names, Definitions known, Findings findings) {
    this.lots = lots;
    this.names = names;
    this.known = known;
    this.findings = findings;
  }

  /** The holds of a plan, by the names of lots as they are spelt there. */
  Map<String, PlannedHold> read(Fields holds, String table, Where file) {
    Row all = JsonShape.row(table, holds, PlanShape.HOLD, file, findings);
    for (String typed : all.headings()) {
      try {
        String name = names.spelling(typed);
        if (all.cell(typed) instanceof Fields fields) {
          add(name, JsonShape.row(table, fields, "hold of " + name, all.where(typed), findings));
        }
      } catch (CellFault unknown) {
        all.fail(typed, unknown::at);
      }
    }
    return this.holds;
  }

  private void add(String name, Row row) {
    boolean none = row.has(PlanShape.HOLD_SHARE) && !row.has(PlanShape.HOLD_GRADE);
    double share = row.get(PlanShape.HOLD_SHARE, As.share(), 1.0);
    boolean advised = row.get(PlanShape.HOLD_ADVISED, As.YES_NO, false);
    if (none && share == 0) {
      put(name, new PlannedHold(Optional.empty(), advised), row);
      return;
    }
    Optional<String> grade = row.findName(PlanShape.HOLD_GRADE, grades(name));
    Which which = row.get(PlanShape.HOLD_WHICH, As.word(Which.class), Which.ALIKE);
    if (grade.isEmpty() && !row.isFailed()) {
      row.fail(PlanShape.HOLD_SHARE, PlanAdvice::holdNeedsGrade);
    }
    Optional<Hold> hold =
        grade.filter(any -> share > 0).map(found -> new Hold(found, share, which));
    if (!row.isFailed()) {
      put(name, new PlannedHold(hold, advised), row);
    }
  }

  private void put(String name, PlannedHold hold, Row row) {
    if (holds.putIfAbsent(name, hold) != null) {
      row.fail(where -> ValueAdvice.defined(where, name, name));
    }
  }

  private Names grades(String name) {
    return Optional.ofNullable(lots.get(name))
        .map(lot -> LotCells.grades(lot.species(), known.species(), known.ladders()))
        .orElseGet(() -> new Names("grade", GradesTable.FORMAT.name()).leaveOpen());
  }
}
