package growingon.write.text;

import growingon.report.fit.SpeciesEdit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Edits of species.csv: cells are replaced in place, and columns it lacks are added at its end. */
final class ProposalCsv {
  private ProposalCsv() {}

  static String edited(String text, List<SpeciesEdit> edits, String until, String head) {
    char delimiter = delimiter(text);
    List<List<Cell>> rows = rows(text, delimiter);
    Optional<List<Cell>> headings =
        rows.stream()
            .filter(
                row ->
                    row.stream()
                        .anyMatch(
                            cell -> ProposalEdits.key(cell.value).equalsIgnoreCase("species")))
            .filter(row -> row.size() > 1)
            .findFirst();
    List<ProposalEdits.Change> changes = new ArrayList<>();
    Map<String, Map<List<Cell>, String>> added = new LinkedHashMap<>();
    headings.ifPresent(row -> edit(row, rows, edits, until, delimiter, changes, added));
    headings.ifPresent(row -> addColumns(row, rows, added, delimiter, changes));
    return quoted(head) + "\n" + ProposalEdits.applied(text, changes);
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
      List<ProposalEdits.Change> changes,
      Map<String, Map<List<Cell>, String>> added) {
    int names = column(headings, "species");
    ProposalEdits.bySpecies(edits)
        .forEach(
            (name, own) ->
                rows.stream()
                    .filter(row -> row != headings && row.size() > names)
                    .filter(
                        row ->
                            ProposalEdits.key(row.get(names).value)
                                .equalsIgnoreCase(ProposalEdits.key(name)))
                    .forEach(
                        row ->
                            new CsvRow(headings, row, delimiter, changes, added).edit(own, until)));
  }

  /** The edits of one species in its row. */
  private record CsvRow(
      List<Cell> headings,
      List<Cell> row,
      char delimiter,
      List<ProposalEdits.Change> changes,
      Map<String, Map<List<Cell>, String>> added) {
    void edit(List<SpeciesEdit> edits, String until) {
      for (SpeciesEdit edit : edits) {
        if (edit.isOther()) {
          put(edit.heading(), shown(ProposalEdits.number(edit.number())));
        }
        putFirst("prior " + edit.priorKey(), OptionalDouble.of(edit.prior()));
        putFirst("prior sure % " + edit.priorKey(), edit.priorSure());
        if (edit.sure().isPresent()) {
          put(sureHeading(edit), shown(ProposalEdits.plain(edit.sure().getAsDouble())));
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
        value.ifPresent(number -> put(heading, shown(ProposalEdits.plain(number))));
      }
    }

    private void put(String heading, String value) {
      int column = column(headings, heading);
      if (column >= 0 && column < row.size()) {
        changes.add(new ProposalEdits.Change(row.get(column).from, row.get(column).to, value));
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
    return ProposalEdits.key(heading.replace('_', ' ').replace('-', ' ')).toLowerCase(Locale.ROOT);
  }

  /** Columns that the table does not have yet, at its end. */
  private static void addColumns(
      List<Cell> headings,
      List<List<Cell>> rows,
      Map<String, Map<List<Cell>, String>> added,
      char delimiter,
      List<ProposalEdits.Change> changes) {
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
      changes.add(new ProposalEdits.Change(end, end, more.toString()));
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
