package growingon.write.text;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import growingon.report.fit.SpeciesEdit;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A proposal as edits of the grower's own texts: only numbers are replaced, and what was is told in
 * a comment; everything else stays letter by letter.
 */
public final class ProposalText {
  private static final JsonFactory JSON =
      JsonFactory.builder()
          .enable(JsonReadFeature.ALLOW_JAVA_COMMENTS)
          .enable(JsonReadFeature.ALLOW_TRAILING_COMMA)
          .build();

  private static final int DIGITS = 3;

  private ProposalText() {}

  /** A number as it is proposed: three digits that count. */
  private static String number(double value) {
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(DIGITS)).stripTrailingZeros();
    return rounded.toPlainString();
  }

  /** A piece of a text that becomes another. */
  private record Change(int from, int to, String text) {}

  /** A number or an object, and where it stands. */
  private record Place(int from, int to) {}

  /**
   * Edits species.json.
   *
   * @param text the file as it is
   * @param edits what is proposed; those of species that it does not have are left out
   * @param until last month of the records, as 2026-10
   * @param head first line: what the file is
   */
  public static String json(String text, List<SpeciesEdit> edits, String until, String head) {
    Map<String, Place> places = places(text);
    List<Change> changes = new ArrayList<>();
    TreeMap<Integer, List<String>> comments = new TreeMap<>();
    for (SpeciesEdit edit : edits) {
      Place species = places.get(path(edit.species()));
      if (species == null) {
        continue;
      }
      Place at = places.get(fullPath(edit));
      if (at != null) {
        changes.add(new Change(at.from, at.to, number(edit.number())));
        comments
            .computeIfAbsent(lineEnd(text, at.to), each -> new ArrayList<>())
            .add(edit.comment());
      } else if (edit.condition().isEmpty()) {
        changes.add(
            new Change(
                species.from + 1,
                species.from + 1,
                "%n      \"%s\": %s,  // %s%n"
                    .formatted(edit.key(), number(edit.number()), edit.comment())
                    .replace(System.lineSeparator(), "\n")));
      }
    }
    addPriors(places, edits, until, changes);
    comments.forEach(
        (end, told) -> changes.add(new Change(end, end, "  // " + String.join(" | ", told))));
    return "// " + head + "\n" + applied(text, changes);
  }

  /** Notes what was assumed before, from which the next fit starts again. */
  private static void addPriors(
      Map<String, Place> places, List<SpeciesEdit> edits, String until, List<Change> changes) {
    Map<String, List<SpeciesEdit>> bySpecies = new LinkedHashMap<>();
    edits.forEach(
        edit -> bySpecies.computeIfAbsent(edit.species(), each -> new ArrayList<>()).add(edit));
    bySpecies.forEach(
        (name, own) -> {
          Place species = places.get(path(name));
          if (species == null) {
            return;
          }
          List<String> priors =
              own.stream()
                  .filter(edit -> !places.containsKey(path(name, "prior", priorKey(edit))))
                  .map(edit -> "\"%s\": %s".formatted(priorKey(edit), plain(edit.prior())))
                  .toList();
          Place prior = places.get(path(name, "prior"));
          String added = "";
          if (prior != null && !priors.isEmpty()) {
            changes.add(
                new Change(prior.from + 1, prior.from + 1, " " + String.join(", ", priors) + ","));
          } else if (prior == null) {
            added = "\n      \"prior\": { " + String.join(", ", priors) + " },";
          }
          Place learnt = places.get(path(name, "learnt until"));
          if (learnt == null) {
            added += "\n      \"learnt until\": \"" + until + "\",";
          } else {
            changes.add(new Change(learnt.from, learnt.to, "\"" + until + "\""));
          }
          if (!added.isEmpty()) {
            changes.add(new Change(species.from + 1, species.from + 1, added));
          }
        });
  }

  private static String priorKey(SpeciesEdit edit) {
    return edit.condition().isEmpty() ? edit.key() : "growth " + edit.condition();
  }

  /** As it was typed, not rounded. */
  private static String plain(double value) {
    BigDecimal exact = new BigDecimal(value).round(new MathContext(12)).stripTrailingZeros();
    return exact.toPlainString();
  }

  private static String path(String... keys) {
    return String.join("\n", keys).toLowerCase(Locale.ROOT);
  }

  private static String fullPath(SpeciesEdit edit) {
    return edit.condition().isEmpty()
        ? path(edit.species(), edit.key())
        : path(edit.species(), "growth", edit.condition(), edit.key());
  }

  private static int lineEnd(String text, int from) {
    int end = text.indexOf('\n', from);
    if (end < 0) {
      return text.length();
    }
    return end > 0 && text.charAt(end - 1) == '\r' ? end - 1 : end;
  }

  /** Where the numbers and objects under "species" stand. */
  private static Map<String, Place> places(String text) {
    Map<String, Place> places = new HashMap<>();
    try (JsonParser parser = JSON.createParser(text)) {
      Deque<String> keys = new ArrayDeque<>();
      JsonToken token = parser.nextToken();
      while (token != null) {
        switch (token) {
          case FIELD_NAME -> keys.addLast(key(parser.currentName()));
          case START_OBJECT, START_ARRAY -> {
            note(places, keys, parser);
            if (token == JsonToken.START_ARRAY) {
              parser.skipChildren();
              keys.pollLast();
            }
          }
          case END_OBJECT -> keys.pollLast();
          default -> {
            note(places, keys, parser);
            keys.pollLast();
          }
        }
        token = parser.nextToken();
      }
    } catch (IOException broken) {
      throw new UncheckedIOException("a file that was read cannot be read again", broken);
    }
    return places;
  }

  private static String key(String name) {
    return name.strip().replaceAll("\\s+", " ");
  }

  private static void note(Map<String, Place> places, Deque<String> keys, JsonParser parser)
      throws IOException {
    List<String> path = new ArrayList<>(keys);
    if (path.size() < 2 || !path.get(0).equalsIgnoreCase("species")) {
      return;
    }
    int from = (int) parser.currentTokenLocation().getCharOffset();
    int quotes = parser.currentToken() == JsonToken.VALUE_STRING ? 2 : 0;
    int to = from + parser.getTextLength() + quotes;
    places.put(path(path.subList(1, path.size()).toArray(String[]::new)), new Place(from, to));
  }

  private static String applied(String text, List<Change> changes) {
    StringBuilder edited = new StringBuilder(text);
    // From the end, so that what stands before keeps its place; comments before numbers of a line.
    changes.stream()
        .sorted(Comparator.comparingInt(Change::from).reversed())
        .forEach(each -> edited.replace(each.from, each.to, each.text));
    return edited.toString();
  }

  /**
   * Edits species.csv.
   *
   * @param text the file as it is
   * @param edits what is proposed; those of species that it does not have are left out
   * @param head first line: what the file is
   */
  public static String csv(String text, List<SpeciesEdit> edits, String head) {
    char delimiter = delimiter(text);
    List<List<Cell>> rows = rows(text, delimiter);
    Optional<List<Cell>> headings =
        rows.stream()
            .filter(
                row -> row.stream().anyMatch(cell -> key(cell.value).equalsIgnoreCase("species")))
            .filter(row -> row.size() > 1)
            .findFirst();
    List<Change> changes = new ArrayList<>();
    Map<String, Map<List<Cell>, String>> added = new LinkedHashMap<>();
    headings.ifPresent(row -> edit(row, rows, edits, delimiter, changes, added));
    headings.ifPresent(row -> addColumns(row, rows, added, delimiter, changes));
    return quoted(head) + "\n" + applied(text, changes);
  }

  private static String quoted(String text) {
    return '"' + text.replace("\"", "\"\"") + '"';
  }

  private static void edit(
      List<Cell> headings,
      List<List<Cell>> rows,
      List<SpeciesEdit> edits,
      char delimiter,
      List<Change> changes,
      Map<String, Map<List<Cell>, String>> added) {
    int names = column(headings, "species");
    for (SpeciesEdit edit : edits) {
      for (List<Cell> row : rows) {
        boolean isIt =
            row != headings
                && row.size() > names
                && key(row.get(names).value).equalsIgnoreCase(key(edit.species()));
        if (!isIt) {
          continue;
        }
        String number = number(edit.number());
        String shown = delimiter == ';' ? number.replace('.', ',') : number;
        int column = column(headings, edit.heading());
        if (column >= 0 && column < row.size()) {
          changes.add(new Change(row.get(column).from, row.get(column).to, shown));
        } else {
          added.computeIfAbsent(edit.heading(), each -> new HashMap<>()).put(row, shown);
        }
      }
    }
  }

  private static int column(List<Cell> headings, String heading) {
    for (int i = 0; i < headings.size(); i++) {
      if (headingKey(headings.get(i).value).equals(headingKey(heading))) {
        return i;
      }
    }
    return -1;
  }

  private static String headingKey(String heading) {
    return key(heading.replace('_', ' ').replace('-', ' ')).toLowerCase(Locale.ROOT);
  }

  /** Columns that the table does not have yet, at its end. */
  private static void addColumns(
      List<Cell> headings,
      List<List<Cell>> rows,
      Map<String, Map<List<Cell>, String>> added,
      char delimiter,
      List<Change> changes) {
    if (added.isEmpty()) {
      return;
    }
    for (List<Cell> row : rows) {
      StringBuilder more = new StringBuilder();
      if (row != headings) {
        // A row may be shorter than its headings.
        more.append(String.valueOf(delimiter).repeat(Math.max(0, headings.size() - row.size())));
      }
      added.forEach(
          (heading, values) ->
              more.append(delimiter)
                  .append(row == headings ? heading : values.getOrDefault(row, "")));
      int end = row.get(row.size() - 1).to;
      changes.add(new Change(end, end, more.toString()));
    }
  }

  /** A cell of a CSV file and where it stands. */
  private record Cell(String value, int from, int to) {}

  private static char delimiter(String text) {
    for (String line : text.split("\r?\n")) {
      String key = line.toLowerCase(Locale.ROOT);
      if (key.contains("species") && (line.contains(",") || line.contains(";"))) {
        long commas = line.chars().filter(each -> each == ',').count();
        long semicolons = line.chars().filter(each -> each == ';').count();
        return semicolons > commas ? ';' : ',';
      }
    }
    return ',';
  }

  private static List<List<Cell>> rows(String text, char delimiter) {
    List<List<Cell>> rows = new ArrayList<>();
    List<Cell> row = new ArrayList<>();
    int from = 0;
    boolean quoted = false;
    for (int i = 0; i <= text.length(); i++) {
      char at = i < text.length() ? text.charAt(i) : '\n';
      if (at == '"') {
        quoted = !quoted;
      }
      boolean ends = i == text.length() || (!quoted && (at == delimiter || at == '\n'));
      if (!ends) {
        continue;
      }
      int to = at == '\n' && i > from && text.charAt(i - 1) == '\r' ? i - 1 : i;
      row.add(new Cell(unquoted(text.substring(from, to)), from, to));
      from = i + 1;
      if (at == '\n') {
        if (row.size() > 1 || !row.get(0).value.isEmpty()) {
          rows.add(row);
        }
        row = new ArrayList<>();
      }
    }
    return rows;
  }

  private static String unquoted(String raw) {
    String cell = raw.strip();
    return cell.length() > 1 && cell.startsWith("\"") && cell.endsWith("\"")
        ? cell.substring(1, cell.length() - 1).replace("\"\"", "\"").strip()
        : cell;
  }
}
