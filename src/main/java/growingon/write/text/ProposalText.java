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
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

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
  private static final String GROWTH_SURE = "growth sure %";

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
    Map<Integer, List<String>> comments = new TreeMap<>();
    bySpecies(edits)
        .forEach(
            (name, own) -> {
              Place species = places.get(path(name));
              if (species != null) {
                new Entry(text, places, species, own, changes, comments).edit(until);
              }
            });
    comments.forEach((end, all) -> changes.add(comment(text, end, all)));
    return "// " + head + "\n" + applied(text, changes);
  }

  /** One comment at the end of a line, which goes on with the grower's own where there is one. */
  private static Change comment(String text, int end, List<String> all) {
    String begin = hasComment(text, end) ? "; " : "  // ";
    return new Change(end, end, begin + String.join("; ", all));
  }

  /** Whether a line has a comment up to its end, outside of what is quoted. */
  private static boolean hasComment(String text, int end) {
    boolean isQuoted = false;
    for (int i = text.lastIndexOf('\n', end - 1) + 1; i < end; i++) {
      char at = text.charAt(i);
      if (isQuoted && at == '\\') {
        i++;
      } else if (at == '"') {
        isQuoted = !isQuoted;
      } else if (!isQuoted && text.startsWith("//", i)) {
        return true;
      }
    }
    return false;
  }

  private static Map<String, List<SpeciesEdit>> bySpecies(List<SpeciesEdit> edits) {
    Map<String, List<SpeciesEdit>> bySpecies = new LinkedHashMap<>();
    edits.forEach(
        edit -> bySpecies.computeIfAbsent(edit.species(), each -> new ArrayList<>()).add(edit));
    return bySpecies;
  }

  /** The edits of one species. Keys that it does not have yet go to its beginning, a line each. */
  private record Entry(
      String text,
      Map<String, Place> places,
      Place species,
      List<SpeciesEdit> edits,
      List<Change> changes,
      Map<Integer, List<String>> comments) {
    void edit(String until) {
      StringBuilder added = new StringBuilder();
      edits.stream().filter(SpeciesEdit::isOther).forEach(edit -> number(edit, added));
      addGrowthSure(added);
      edits.stream()
          .filter(edit -> !edit.isGrowth() && edit.sure().isPresent())
          .forEach(edit -> put(edit.sureKey(), plain(edit.sure().getAsDouble()), added));
      addPriors("prior", edit -> OptionalDouble.of(edit.prior()), added);
      addPriors("prior sure %", SpeciesEdit::priorSure, added);
      put("learnt until", '"' + until + '"', added);
      if (!added.isEmpty()) {
        boolean goesOn =
            text.charAt(species.from + 1) != '\n' && text.charAt(species.from + 1) != '\r';
        added.append(goesOn ? "\n     " : "");
        changes.add(new Change(species.from + 1, species.from + 1, added.toString()));
      }
    }

    private String name() {
      return edits.get(0).species();
    }

    private static String line(String key, String value, String comment) {
      return "\n      \"%s\": %s,%s"
          .formatted(key, value, comment.isEmpty() ? "" : "  // " + comment);
    }

    /** Puts a value in the place of another, or adds it. */
    private void put(String key, String value, StringBuilder added) {
      Place at = places.get(path(name(), key));
      if (at == null) {
        added.append(line(key, value, ""));
      } else {
        changes.add(new Change(at.from, at.to, value));
      }
    }

    private void number(SpeciesEdit edit, StringBuilder added) {
      Place at = places.get(fullPath(edit));
      if (at != null) {
        changes.add(new Change(at.from, at.to, ProposalText.number(edit.number())));
        comments
            .computeIfAbsent(lineEnd(text, at.to), each -> new ArrayList<>())
            .add(edit.comment());
      } else if (edit.isGrowth()) {
        grow(edit, added);
      } else {
        added.append(line(edit.key(), ProposalText.number(edit.number()), edit.comment()));
      }
    }

    /** Growth that was the library's becomes the grower's own. */
    private void grow(SpeciesEdit edit, StringBuilder added) {
      String law =
          "\"%s\": { \"curve\": \"steady\", \"g\": %s%s }"
              .formatted(
                  edit.condition(),
                  ProposalText.number(edit.number()),
                  edit.mostMm().isPresent()
                      ? ", \"most mm\": " + plain(edit.mostMm().getAsDouble())
                      : "");
      Place growth = places.get(path(name(), "growth"));
      if (growth == null) {
        added.append(line("growth", "{ " + law + " }", edit.comment()));
      } else {
        changes.add(new Change(growth.from + 1, growth.from + 1, " " + law + ","));
      }
    }

    /** How sure growth is: one number, or one for each condition where there are several. */
    private void addGrowthSure(StringBuilder added) {
      Map<String, String> sures = new LinkedHashMap<>();
      Place at = places.get(path(name(), GROWTH_SURE));
      List<String> conditions = edits.get(0).conditions();
      for (String condition : conditions) {
        Place own = places.get(path(name(), GROWTH_SURE, condition));
        Place typed = own != null ? own : at != null && isNumber(at) ? at : null;
        if (typed != null) {
          sures.put(condition, text.substring(typed.from, typed.to));
        }
      }
      boolean isLearnt = false;
      for (SpeciesEdit edit : edits) {
        if (edit.isGrowth() && edit.sure().isPresent()) {
          sures.put(edit.condition(), plain(edit.sure().getAsDouble()));
          isLearnt = true;
        }
      }
      if (isLearnt) {
        put(
            GROWTH_SURE,
            conditions.size() == 1 ? sures.get(conditions.get(0)) : object(sures),
            added);
      }
    }

    private boolean isNumber(Place at) {
      return text.charAt(at.from) != '{';
    }

    private static String object(Map<String, String> values) {
      return values.entrySet().stream()
          .map(each -> "\"%s\": %s".formatted(each.getKey(), each.getValue()))
          .collect(Collectors.joining(", ", "{ ", " }"));
    }

    /** Notes what was assumed before, from which the next fit starts again. */
    private void addPriors(
        String key, Function<SpeciesEdit, OptionalDouble> prior, StringBuilder added) {
      Map<String, String> priors = new LinkedHashMap<>();
      for (SpeciesEdit edit : edits) {
        boolean isNew = !places.containsKey(path(name(), key, edit.priorKey()));
        OptionalDouble value = isNew ? prior.apply(edit) : OptionalDouble.empty();
        value.ifPresent(number -> priors.put(edit.priorKey(), plain(number)));
      }
      Place at = places.get(path(name(), key));
      if (at == null && !priors.isEmpty()) {
        added.append(line(key, object(priors), ""));
      } else if (!priors.isEmpty()) {
        String more = object(priors);
        changes.add(
            new Change(at.from + 1, at.from + 1, more.substring(1, more.length() - 2) + ","));
      }
    }
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
          case END_OBJECT -> {
            close(places, keys, parser);
            keys.pollLast();
          }
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

  /** An object goes on to its closing bracket. */
  private static void close(Map<String, Place> places, Deque<String> keys, JsonParser parser) {
    if (keys.size() < 2) {
      return;
    }
    String path = path(List.copyOf(keys).subList(1, keys.size()).toArray(String[]::new));
    int end = (int) parser.currentTokenLocation().getCharOffset() + 1;
    places.computeIfPresent(path, (same, place) -> new Place(place.from, end));
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
   * @param until last month of the records, as 2026-10
   * @param head first line: what the file is
   */
  public static String csv(String text, List<SpeciesEdit> edits, String until, String head) {
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
    headings.ifPresent(row -> edit(row, rows, edits, until, delimiter, changes, added));
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
      String until,
      char delimiter,
      List<Change> changes,
      Map<String, Map<List<Cell>, String>> added) {
    int names = column(headings, "species");
    bySpecies(edits)
        .forEach(
            (name, own) ->
                rows.stream()
                    .filter(row -> row != headings && row.size() > names)
                    .filter(row -> key(row.get(names).value).equalsIgnoreCase(key(name)))
                    .forEach(
                        row ->
                            new CsvRow(headings, row, delimiter, changes, added).edit(own, until)));
  }

  /** The edits of one species in its row. */
  private record CsvRow(
      List<Cell> headings,
      List<Cell> row,
      char delimiter,
      List<Change> changes,
      Map<String, Map<List<Cell>, String>> added) {
    void edit(List<SpeciesEdit> edits, String until) {
      for (SpeciesEdit edit : edits) {
        if (edit.isOther()) {
          put(edit.heading(), shown(ProposalText.number(edit.number())));
        }
        putFirst("prior " + edit.priorKey(), OptionalDouble.of(edit.prior()));
        putFirst("prior sure % " + edit.priorKey(), edit.priorSure());
        if (edit.sure().isPresent()) {
          put(sureHeading(edit), shown(plain(edit.sure().getAsDouble())));
        }
      }
      put("learnt until", until);
    }

    private static String sureHeading(SpeciesEdit edit) {
      boolean oneOfSeveral = edit.isGrowth() && edit.conditions().size() > 1;
      return oneOfSeveral ? edit.sureKey() + " " + edit.condition() : edit.sureKey();
    }

    private String shown(String number) {
      return delimiter == ';' ? number.replace('.', ',') : number;
    }

    private void putFirst(String heading, OptionalDouble value) {
      int column = column(headings, heading);
      boolean isThere = column >= 0 && column < row.size() && !row.get(column).value.isEmpty();
      if (!isThere) {
        value.ifPresent(number -> put(heading, shown(plain(number))));
      }
    }

    private void put(String heading, String value) {
      int column = column(headings, heading);
      if (column >= 0 && column < row.size()) {
        changes.add(new Change(row.get(column).from, row.get(column).to, value));
      } else {
        added.computeIfAbsent(heading, each -> new HashMap<>()).put(row, value);
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
