package growingon.command;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/**
 * A nursery in files whose best answer can be summed by hand: nothing dies, all plants of a lot are
 * alike, and nothing costs or pays but what a test writes. Its plan begins in October 2026. A tree
 * of {@value #GROWING} is thin at 10 mm and thick at 20, which takes it a year.
 */
final class KnownNursery {
  static final String GROWING = "oak";

  private static final LocalDate DAY = LocalDate.of(2026, 10, 5);
  private static final String ALL_SURE = "100,100,100,0,0,0,0,1,1";

  private final Path folder;
  private final Map<String, String> tables = new LinkedHashMap<>();
  private final Map<String, String> plan = new LinkedHashMap<>();

  KnownNursery(Path folder) {
    this.folder = folder;
    settings("hourly rate,0", "discount rate % a year,0", "labour spread %,0", "lot spread %,0");
    table(
        "species",
        "species,ladder,usual condition,first-year loss %,later loss %,mm a year field,"
            + "growth sure %,first-year loss sure %,later loss sure %,vigour spread %,"
            + "year spread %,loss spread %,lot spread %,root-work check 1,root-work check 2",
        "oak,growing,field,0,0,10," + ALL_SURE,
        "elm,sold,field,0,0,0," + ALL_SURE);
    table(
        "grades",
        "ladder,grade,rank,least trunk mm",
        "growing,thin,1,1",
        "growing,thick,2,19.9",
        "sold,any,1,1");
    table("routes", "route,step,when", "none,look,arrival");
    table("places", "place,kind,square metres,usable %", "field,standing ground,1000,100");
    plan("\"first month\": \"2026-10\"");
    plan("\"seasons\": 1");
    plan("\"horizon value\": 0");
  }

  KnownNursery table(String name, String... lines) {
    tables.put(name, String.join("\n", lines) + "\n");
    return this;
  }

  /** Settings, beside those of every such nursery. */
  KnownNursery settings(String... lines) {
    String before = tables.getOrDefault("settings", "name,value\ncurrency,EUR\n");
    return table("settings", (before + String.join("\n", lines)).split("\n"));
  }

  /** A line of plan.json, in place of one that begins alike. */
  KnownNursery plan(String line) {
    plan.put(line.substring(0, line.indexOf(':')), line);
    return this;
  }

  /** Rows of offers: name, species, unit price, least, multiple, most, carriage, arrival, route. */
  KnownNursery offers(String... rows) {
    return table(
        "offers",
        Stream.concat(
                Stream.of(
                    "offer,species,unit price,least,multiple,most,carriage,arrival month,route,"
                        + "form,trunk mm,trunk spread %,plants per m2,place,not before"),
                Stream.of(rows).map(KnownNursery::fromItsArrival))
            .toArray(String[]::new));
  }

  private static String fromItsArrival(String row) {
    String arrival = row.split(",", -1)[7];
    return row + ",container,10,0,100,field," + arrival;
  }

  /** Rows of demand: species, grade, price, units, month, season. */
  KnownNursery demand(String... rows) {
    return table(
        "demand",
        Stream.concat(
                Stream.of("species,grade,price,units,from month,season,to month"),
                Stream.of(rows).map(row -> row + "," + row.split(",", -1)[4]))
            .toArray(String[]::new));
  }

  /** Writes the same into a column of each row of a table, which is added if it is not there. */
  KnownNursery withColumn(String table, String heading, String value) {
    List<String> lines = List.of(tables.get(table).split("\n"));
    List<String> headings = List.of(lines.get(0).split(","));
    int at = headings.indexOf(heading);
    List<String> changed = new ArrayList<>();
    for (String line : lines) {
      List<String> cells = new ArrayList<>(List.of(line.split(",", -1)));
      String cell = changed.isEmpty() ? heading : value;
      if (at < 0) {
        cells.add(cell);
      } else {
        cells.set(at, cell);
      }
      changed.add(String.join(",", cells));
    }
    return table(table, changed.toArray(String[]::new));
  }

  /** So many oaks of 10 mm that stand. */
  KnownNursery standing(int oaks) {
    return table(
        "stock",
        "lot,species,form,quantity,arrived,route,trunk mm,trunk spread %,plants per m2,place",
        "old,oak,container," + oaks + ",2025-03,none,10,0,100,field");
  }

  /** Buying, asked of its files. */
  Ran buying(String... more) throws IOException {
    for (Map.Entry<String, String> table : tables.entrySet()) {
      Files.writeString(folder.resolve(table.getKey() + ".csv"), table.getValue());
    }
    Files.writeString(folder.resolve("plan.json"), "{" + String.join(", ", plan.values()) + "}");
    return ran("buying", "plan.json", "b", more);
  }

  /** A plan of what was recommended. */
  Ran planned() {
    return ran("plan", "b/recommended-plan.json", "p");
  }

  private Ran ran(String command, String what, String out, String... more) {
    Stream<String> words =
        Stream.of(
            command, folder.resolve(what).toString(), "--out", folder.resolve(out).toString());
    return Ran.on(DAY, Stream.concat(words, Stream.of(more)).toArray(String[]::new));
  }

  /** A value of the first row of a table of the answer that has a text in its first column. */
  JsonNode figure(String table, String first, String column) throws IOException {
    JsonNode all =
        new ObjectMapper()
            .readTree(folder.resolve("b/figures.json").toFile())
            .at("/tables/" + table);
    int at = all.get("columns").findValuesAsText("key").indexOf(column);
    return StreamSupport.stream(all.get("rows").spliterator(), false)
        .filter(row -> row.get(0).asText().equals(first))
        .findFirst()
        .orElseThrow()
        .get(at);
  }
}
