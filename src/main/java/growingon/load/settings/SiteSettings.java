package growingon.load.settings;

import growingon.load.cell.Cell;
import growingon.load.cell.Cell.Fields;
import growingon.load.cell.CellFault;
import growingon.load.cell.Findings;
import growingon.load.cell.Nearest;
import growingon.load.cell.Range;
import growingon.load.cell.Texts;
import growingon.load.row.As;
import growingon.load.row.Row;
import growingon.load.source.JsonShape;
import growingon.load.table.NurseryShape;
import growingon.nursery.library.Library;
import growingon.nursery.species.Climate;
import growingon.nursery.species.LibrarySite;
import growingon.problem.advice.ValueAdvice;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The settings that say what the library of species must know of the nursery. */
final class SiteSettings {
  private static final Pattern CONDITION =
      Pattern.compile("library[\\s_-]+condition[\\s_:-]+(.+)", Pattern.CASE_INSENSITIVE);

  private static final Range SPEED = Range.of(0.1, 10);
  private static final Range SPECIES = Range.of(0, 1000);

  private SiteSettings() {}

  /** The growing condition that a setting such as "library condition patio pot" is of. */
  static Optional<String> conditionIn(String setting) {
    Matcher matcher = CONDITION.matcher(Texts.clean(setting));
    return matcher.matches() ? Optional.of(matcher.group(1)) : Optional.empty();
  }

  static LibrarySite read(Row row, Findings findings) {
    double speed = row.get(NurseryShape.SITE_SPEED, As.number(SPEED), 1.0);
    return new LibrarySite(
        row.get(NurseryShape.CLIMATE, As.word(Climate.class), Climate.TEMPERATE),
        speed == 0 ? 1 : speed,
        row.get(NurseryShape.SITE_SPEED_FROM, As.whole(SPECIES), 0),
        conditions(row, findings));
  }

  private static Map<String, String> conditions(Row row, Findings findings) {
    Map<String, String> conditions = new LinkedHashMap<>();
    if (row.cell(NurseryShape.LIBRARY_CONDITIONS) instanceof Fields fields) {
      Row each =
          JsonShape.row(
              SettingsReader.FORMAT.name(),
              fields,
              NurseryShape.LIBRARY_CONDITIONS,
              row.where(),
              row.style(),
              findings);
      for (String yours : each.headings()) {
        each.find(yours, condition()).ifPresent(ours -> conditions.put(Texts.key(yours), ours));
      }
      if (each.isFailed()) {
        row.fault();
      }
    }
    return conditions;
  }

  /** A growing condition of the library. */
  private static As<String> condition() {
    return new As<>("field", (cell, spot) -> conditionOf(cell), name -> name, heading -> "");
  }

  private static String conditionOf(Cell cell) {
    List<String> known = Library.shipped().conditions();
    String key = Texts.key(cell.shown());
    if (!known.contains(key)) {
      throw new CellFault(
          where ->
              ValueAdvice.notOneOf(where, cell.shown(), known, Nearest.to(cell.shown(), known)));
    }
    return key;
  }
}
