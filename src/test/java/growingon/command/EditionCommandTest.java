package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Puts a canary into every field that somebody else is not to see, makes every edition, and
 * searches every byte of it, the workbook unzipped.
 */
class EditionCommandTest {
  /** Hidden from everybody. */
  private static final List<String> ALWAYS =
      List.of(
          "canarylot",
          "canarytaken",
          "canaryspare",
          "canarynote",
          "canarypass",
          "canaryorigin",
          "canaryfrom",
          "canaryhealth",
          "canarycustomer",
          "canaryheading",
          "canaryfolder",
          "canaryfile",
          "canaryroot",
          "17.319173");

  /** Shown to a partner with costs only. */
  private static final List<String> COSTS =
      List.of("canarysupplier", "canarygrower", "canaryseller", "sek", "0.0791", "37.179731");

  private static final List<String> UNIT_COSTS = List.of("13.371937", "1604.63");

  @TempDir Path temporary;
  private Path plan;
  private Path reports;

  @BeforeEach
  void nursery() throws IOException {
    Path root = Files.createDirectories(temporary.resolve("canaryroot"));
    Path folder = Files.createDirectory(root.resolve("canaryfolder"));
    reports = temporary.resolve("out");
    try (Stream<Path> files = Files.list(Path.of("demo-data"))) {
      for (Path file : files.filter(each -> !each.endsWith("stock.xlsx")).toList()) {
        Files.copy(file, folder.resolve(file.getFileName().toString()));
      }
    }
    change(folder.resolve("nursery.json"), "15.5", "17.319173");
    change(folder.resolve("nursery.json"), "\"EUR\": 0.86", "\"EUR\": 0.86, \"SEK\": 0.0791");
    Files.writeString(folder.resolve("stock.csv"), STOCK);
    Files.writeString(folder.resolve("offers.csv"), OFFERS);
    Files.writeString(
        folder.resolve("daybook.csv"),
        "date,lot,what,quantity,customer code\n2024-12-01,canarylot one,sold,3,canarycustomer\n");
    addHealthNote(folder.resolve("species.csv"));
    plan = root.resolve("canaryfile.json");
    Files.writeString(
        plan,
        "{\"name\": \"shown\", \"nursery\": \"canaryfolder\", \"first month\": \"2026-11\","
            + " \"seasons\": 4, \"take\": {\"canarytaken\": 40}, \"draws\": 0}");
  }

  private static final String STOCK =
      """
      lot,species,form,quantity,arrived,trunk mm,pot,place,route,kept,unit cost,supplier,passport,origin,from lot,note,canaryheading
      canarylot one,Hornbeam,container,120,2024-03,22,18 litre,East ground,liners in pots,7,13.371937,canarysupplier,canarypass,canaryorigin,canaryfrom,canarynote,x
      canarylot two,Hornbeam,container,83,2024-03,25,18 litre,East ground,liners in pots,0,13.371937,canarysupplier,canarypass,canaryorigin,,canarynote,
      canarylot three,Field maple,container,64,2023-03,31,18 litre,East ground,liners in pots,,13.371937,canarygrower,canarypass,,,,
      canarylot four,English yew,container,31,2023-03,24,11 litre basket,East ground,conifers in baskets,,13.371937,canarygrower,canarypass,,,,
      canarylot five,Trident maple,container,9,2023-03,42,18 litre,East ground,container trees,9,13.371937,,,,,,
      """;

  private static final String OFFERS =
      """
      offer,take,quantity,supplier,species,form,unit price,currency,least,multiple,arrival month,carriage,trunk mm,place,plants per m2,route,passport,origin
      canarytaken,no,,canaryseller,Trident maple,container,37.179731,SEK,20,20,2027-02,11,23,East ground,11,container trees,canarypass,canaryorigin
      canaryspare,no,,canaryseller,Hornbeam,container,41.5,SEK,20,20,2027-02,11,23,East ground,11,container trees,canarypass,canaryorigin
      """;

  private static void change(Path file, String from, String to) throws IOException {
    String text = Files.readString(file);
    assertThat(text).contains(from);
    Files.writeString(file, text.replace(from, to));
  }

  private static void addHealthNote(Path species) throws IOException {
    List<String> lines = new ArrayList<>(Files.readAllLines(species));
    int column = List.of(lines.get(0).split(",", -1)).indexOf("plant health note");
    for (int i = 1; i < lines.size(); i++) {
      if (lines.get(i).startsWith("English yew,")) {
        String[] cells = lines.get(i).split(",", -1);
        cells[column] = "canaryhealth";
        lines.set(i, String.join(",", cells));
      }
    }
    Files.write(species, lines);
  }

  private Path made(String... options) {
    List<String> words = new ArrayList<>(List.of("plan", plan.toString()));
    words.addAll(List.of(options));
    Path folder = reports.resolve("run" + String.join("", options));
    words.addAll(List.of("--out", folder.toString()));
    StringWriter err = new StringWriter();
    int code =
        Main.run(
            new PrintWriter(new StringWriter()),
            new PrintWriter(err),
            words.toArray(String[]::new));
    assertThat(code).as(err.toString()).isZero();
    return folder;
  }

  /** Every file and, of a workbook, every part, as text in lower case; the name stands in front. */
  private static Map<String, String> texts(Path folder) throws IOException {
    Map<String, String> texts = new TreeMap<>();
    List<Path> files;
    try (Stream<Path> walk = Files.walk(folder)) {
      files = walk.filter(Files::isRegularFile).toList();
    }
    for (Path file : files) {
      String name = folder.relativize(file).toString();
      byte[] bytes = Files.readAllBytes(file);
      texts.put(name, text(name, bytes));
      if (name.endsWith(".xlsx")) {
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
          for (ZipEntry each = zip.getNextEntry(); each != null; each = zip.getNextEntry()) {
            texts.put(name + "!" + each.getName(), text(each.getName(), zip.readAllBytes()));
          }
        }
      }
    }
    return texts;
  }

  private static String text(String name, byte[] bytes) {
    String text = name + "\n" + new String(bytes, StandardCharsets.ISO_8859_1);
    return text.toLowerCase(Locale.ROOT);
  }

  /** Whether it is there; a word of three letters stands in any picture by chance. */
  private static boolean holds(String name, String text, String canary) {
    if (canary.length() > 4) {
      return text.contains(canary);
    }
    String words = text.replaceAll("base64,[a-z0-9+/=]*", "");
    return !name.endsWith(".png") && words.matches("(?s).*\\b" + canary + "\\b.*");
  }

  private static void assertHolds(Map<String, String> texts, List<String> canaries) {
    for (String canary : canaries) {
      assertThat(
              texts.entrySet().stream()
                  .anyMatch(each -> holds(each.getKey(), each.getValue(), canary)))
          .as("somewhere: " + canary)
          .isTrue();
    }
  }

  private static void assertHoldsNone(Map<String, String> texts, List<String> canaries) {
    texts.forEach(
        (name, text) -> {
          for (String canary : canaries) {
            assertThat(holds(name, text, canary)).as(canary + " in " + name).isFalse();
          }
        });
  }

  @Test
  void wholeReport_ofTheCanaries_holdsThem() throws IOException {
    Map<String, String> texts = texts(made());
    assertHolds(
        texts,
        List.of(
            "canarylot",
            "canarytaken",
            "canarynote",
            "canarypass",
            "canaryorigin",
            "canaryfrom",
            "canaryhealth",
            "canaryheading",
            "canaryfolder",
            "canaryfile",
            "17.319173",
            "canarysupplier",
            "canaryseller",
            "sek",
            "13.371937"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"partner", "bank", "customer"})
  void edition_holdsNoCanary(String audience) throws IOException {
    Map<String, String> texts = texts(made("--for", audience));
    assertHoldsNone(texts, ALWAYS);
    assertHoldsNone(texts, COSTS);
    assertHoldsNone(texts, UNIT_COSTS);
    assertThat(texts.keySet()).doesNotContain("problems.txt").contains("report.html");
  }

  @Test
  void partner_withCosts_seesSuppliersAndOffersButNoNames() throws IOException {
    Map<String, String> texts = texts(made("--for", "partner", "--with-costs"));
    assertHoldsNone(texts, ALWAYS);
    assertHolds(texts, List.of("canarysupplier", "canaryseller", "sek", "37.179731"));
  }

  @Test
  void bank_seesNeitherSpeciesNorGradesNorPlaces() throws IOException {
    Map<String, String> texts = texts(made("--for", "bank"));
    assertHoldsNone(
        texts, List.of("hornbeam", "trident", "east ground", "18 litre", "shaped", "stout"));
    assertThat(texts.get("tables/cash.csv")).contains("month,sales,bought,other,net,balance");
  }

  @Test
  void customer_seesPricesOnlyIfAsked_inNumbersOfFive() throws IOException {
    String without = availability("--for", "customer");
    String with = availability("--for", "customer", "--with-prices");
    String columns = "species,grade,size,litres,quality,now,first_in,more,from";
    assertThat(without).contains(columns + ",wanted\r\n");
    assertThat(with).contains(columns + ",list_price,wanted\r\n");
    List<String> lines = without.lines().skip(2).toList();
    assertThat(lines).isNotEmpty();
    for (String line : lines) {
      List<String> cells = List.of(line.split(",", -1));
      int now = cells.get(5).isEmpty() ? 0 : Integer.parseInt(cells.get(5));
      int more = cells.get(7).isEmpty() ? 0 : Integer.parseInt(cells.get(7));
      assertThat(now % 5 + more % 5).as(line).isZero();
      assertThat(now + more).as(line).isPositive();
      assertThat(cells.get(8).isEmpty()).as(line).isEqualTo(more == 0);
    }
  }

  private String availability(String... options) throws IOException {
    return texts(made(options)).get("tables/availability-patio-trees.csv");
  }

  @Test
  void customer_ofALotThatIsKeptWhole_seesNothingOfIt() throws IOException {
    change(plan, "{\"canarytaken\": 40}", "{}");
    assertHoldsNone(texts(made("--for", "customer")), List.of("trident"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"partner", "bank", "customer"})
  void edition_saysOnItsFirstPageWhatIsLeftOut(String audience) throws IOException {
    Map<String, String> texts = texts(made("--for", audience));
    assertThat(texts.get("report.html")).contains("left out of this edition");
    assertThat(texts.get("figures.json")).contains("left out of this edition");
  }

  @ParameterizedTest
  @ValueSource(strings = {"partner", "bank", "customer"})
  void edition_madeTwice_hasTheSameBytes(String audience) throws IOException {
    Map<String, String> first = texts(made("--for", audience));
    assertThat(texts(made("--for", audience))).isEqualTo(first);
  }

  @Test
  void optionsOfAnotherEdition_areWrongUsage() {
    StringWriter err = new StringWriter();
    int code =
        Main.run(
            new PrintWriter(new StringWriter()),
            new PrintWriter(err),
            "plan",
            plan.toString(),
            "--for",
            "bank",
            "--with-costs");
    assertThat(code).isEqualTo(ExitCode.WRONG_USAGE);
    assertThat(err.toString()).startsWith("--with-costs goes with --for partner only");
  }
}
