package growingon.load.settings;

import growingon.load.row.Row;
import growingon.load.source.Key;
import growingon.nursery.Plan;
import java.util.List;
import java.util.Map;

/**
 * The keys of a plan's JSON file: a horizon, a nursery, and the offers taken up. For instance
 * {@code { "name": "with the ridge lot", "nursery": "../demo-data", "first month": "2026-11",
 * "seasons": 6, "take": { "ridge lot": 120 }, "draws": 1000, "seed": 1 }}. The components are
 * looked at, never filled: values go through {@link Row}, like those of tables.
 */
public record PlanShape(
    @Key(value = "$schema", says = "JSON Schema of this file, for editors") String schema,
    @Key(value = NAME, says = "Name of the plan and of its report folder [the file's name]")
        String name,
    @Key(
            value = NURSERY,
            says =
                "Folder with the nursery's tables, or one workbook, seen from this file [its own folder]")
        String nursery,
    @Key(value = FIRST_MONTH, says = "First month of the plan, as 2026-11 [this month]")
        String firstMonth,
    @Key(value = SEASONS, says = "Number of seasons [5]", least = 1, most = 40) Integer seasons,
    @Key(
            value = TAKE,
            says =
                "Offers taken and the number of plants of each [those marked take in the offers table]",
            least = 0)
        Map<String, Integer> take,
    @Key(
            value = HOLD,
            says =
                "What is held back of lots and offers, in place of their tables' hold to grade and hold share")
        Map<String, HoldShape> hold,
    @Key(value = ORDERED, says = "Offers taken that are ordered already: buying leaves them [none]")
        List<String> ordered,
    @Key(
            value = SLICES,
            says = "Representative plants a lot [64]",
            least = 16,
            most = Plan.MOST_SLICES)
        Integer slices,
    @Key(
            value = DRAWS,
            says =
                "Draws for chances; 0 for none [200, fewer where lots times draws would be over 100,000, never under 100]",
            least = 0,
            most = Plan.MOST_DRAWS)
        Integer draws,
    @Key(value = SEED, says = "Seed of the draws [1]") Long seed,
    @Key(
            value = HORIZON_VALUE,
            says =
                "What plants unsold at the end are worth: % of list price, or \"stock value\" for the lower of cost and list price, less selling cost [0]")
        String horizonValue,
    @Key(value = HORIZON_VALUE_OLD, says = "Older name of: horizon value", least = 0)
        Double horizonValueOld,
    @Key(
            value = REPORT_FOLDER,
            says = "Folder for the report, seen from this file [reports/ and the plan's name]")
        String reportFolder) {
  /** What is held of a lot. */
  record HoldShape(
      @Key(value = HOLD_GRADE, says = "Grade from which the plants held are sold") String grade,
      @Key(
              value = HOLD_SHARE,
              says = "How many in 100 are held; 0 for none [100]",
              least = 0,
              most = 100)
          Double share,
      @Key(
              value = HOLD_WHICH,
              says = "Which plants: the same share of all, or the thickest [alike]",
              words = {"alike", "best"})
          String which,
      @Key(
              value = HOLD_ADVISED,
              says = "Whether buying advised it, so that it may advise otherwise [no]")
          Boolean advised) {}

  static final String HOLD_GRADE = "grade";
  static final String HOLD_SHARE = "share %";
  static final String HOLD_WHICH = "which";
  static final String HOLD_ADVISED = "advised";
  public static final String NAME = "name";
  public static final String NURSERY = "nursery";
  public static final String FIRST_MONTH = "first month";
  public static final String SEASONS = "seasons";
  public static final String TAKE = "take";
  public static final String HOLD = "hold";
  public static final String ORDERED = "ordered";
  public static final String SLICES = "K";
  public static final String DRAWS = "draws";
  public static final String SEED = "seed";
  public static final String HORIZON_VALUE = "horizon value";
  static final String HORIZON_VALUE_OLD = "horizon value % of list price";
  public static final String REPORT_FOLDER = "report folder";
}
