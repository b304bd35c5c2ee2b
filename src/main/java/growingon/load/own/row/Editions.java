package growingon.load.own.row;

import growingon.load.own.lot.Draft;
import growingon.load.own.lot.Question;
import growingon.load.own.sheet.SheetCell;
import growingon.load.own.text.Keys;
import growingon.load.own.text.Meaning;
import growingon.load.own.text.Titles;
import growingon.problem.MarkedText;
import java.time.YearMonth;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Sheets named by a year, month or date may be one list kept again and again. */
public final class Editions {
  private Editions() {}

  /** Passes over the older of sheets that hold the same lots. */
  public static void passOver(
      List<SheetRead> reads, List<String> notices, List<Question> questions) {
    Map<YearMonth, SheetRead> dated = new TreeMap<>(Comparator.reverseOrder());
    for (SheetRead read : reads) {
      if (read.isList()) {
        month(read.sheet().name()).ifPresent(month -> dated.putIfAbsent(month, read));
      }
    }
    if (dated.size() < 2) {
      return;
    }
    SheetRead newest = dated.values().iterator().next();
    Set<String> there = keys(newest);
    for (SheetRead older : dated.values()) {
      if (older != newest) {
        compare(older, newest, there, notices, questions);
      }
    }
  }

  private static void compare(
      SheetRead older,
      SheetRead newest,
      Set<String> there,
      List<String> notices,
      List<Question> questions) {
    Set<String> keys = keys(older);
    long shared = keys.stream().filter(there::contains).count();
    if (keys.isEmpty() || shared * 5 <= keys.size()) {
      return;
    }
    older.why = "%s is newer and has the same lots".formatted(newest.sheet().name());
    notices.add(
        "%s is taken as an older count: %s of its %s lots are in %s, which alone is read"
            .formatted(
                older.sheet().name(),
                MarkedText.number(shared),
                MarkedText.number(keys.size()),
                newest.sheet().name()));
    if (shared * 2 < keys.size()) {
      questions.add(
          new Question(
              older.sheet().name(),
              0,
              "",
              "sheet",
              older.sheet().name(),
              Meaning.NOT_READ,
              "is %s an older count, or further stock?".formatted(older.sheet().name()),
              older.lots.stream().mapToLong(lot -> lot.quantity.orElse(0)).sum(),
              false,
              List.of(Meaning.NOT_READ, "list")));
    }
  }

  private static Optional<YearMonth> month(String name) {
    if (Keys.of(name).matches("(?:19|20)\\d\\d")) {
      return Optional.of(YearMonth.of(Integer.parseInt(Keys.of(name)), 1));
    }
    return Titles.month(SheetCell.of(name))
        .or(
            () ->
                java.util.regex.Pattern.compile("(20\\d\\d)")
                    .matcher(name)
                    .results()
                    .findFirst()
                    .map(found -> YearMonth.of(Integer.parseInt(found.group(1)), 1)));
  }

  private static Set<String> keys(SheetRead read) {
    Set<String> keys = new HashSet<>();
    for (Draft lot : read.lots) {
      keys.add(
          lot.code.isEmpty()
              ? Keys.of(lot.ownName) + lot.size.pot() + lot.trunkFrom + lot.height
              : Keys.of(lot.code));
    }
    return keys;
  }
}
