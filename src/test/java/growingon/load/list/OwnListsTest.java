package growingon.load.list;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import growingon.load.cell.Findings;
import growingon.load.own.ListReader;
import growingon.load.own.heading.HeadingRead;
import growingon.load.own.heading.OwnWords;
import growingon.load.own.lot.OwnLot;
import growingon.load.own.lot.Site;
import growingon.load.own.row.ListRead;
import growingon.load.own.row.SheetAccount;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Three growers' lists, each against what a person read in it, cell by cell. */
class OwnListsTest {
  static final Path LISTS = Path.of("src/test/resources/own");

  static ListRead read(String file) {
    Findings findings = new Findings();
    return ListReader.read(
        LISTS.resolve(file),
        OwnFile.read(LISTS.resolve(file), findings).orElseThrow(),
        OwnWords.NONE,
        Site.USUAL);
  }

  private static JsonNode expected(String file) throws IOException {
    String base = file.substring(0, file.lastIndexOf('.'));
    return new ObjectMapper().readTree(LISTS.resolve(base + ".expected.json").toFile());
  }

  private record Check(List<String> wrong, String of) {
    void same(String what, Object found, Object expected) {
      if (!found.equals(expected)) {
        wrong.add("%s, %s: %s instead of %s".formatted(of, what, found, expected));
      }
    }

    void near(String what, OptionalDouble found, JsonNode expected) {
      boolean none = expected == null || expected.isNull();
      boolean same =
          none
              ? found.isEmpty()
              : found.isPresent() && Math.abs(found.getAsDouble() - expected.asDouble()) < 0.01;
      if (!same) {
        wrong.add("%s, %s: %s instead of %s".formatted(of, what, found, expected));
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"hollin wood.xlsx", "brookfold tunnels.xlsx", "muehlgrund bestand.csv"})
  void list_ofAGrower_isReadCellByCell(String file) throws IOException {
    ListRead read = read(file);
    JsonNode expected = expected(file);
    List<String> wrong = new ArrayList<>();
    Map<String, OwnLot> lots = new HashMap<>();
    read.lots().forEach(lot -> lots.put(lot.sheet() + " " + lot.row(), lot));
    new Check(wrong, "all").same("lots", read.lots().size(), expected.get("lots").size());
    new Check(wrong, "all").same("plants", read.plants(), expected.get("plants").asLong());
    for (JsonNode lot : expected.get("lots")) {
      String key = lot.get("sheet").asText() + " " + lot.get("row").asText();
      compare(lot, Optional.ofNullable(lots.get(key)), new Check(wrong, key));
    }
    compareHeadings(expected, read, wrong);
    compareAccounts(expected, read, wrong);
    assertThat(wrong).isEmpty();
  }

  private static void compare(JsonNode lot, Optional<OwnLot> found, Check check) {
    if (found.isEmpty()) {
      check.same("row", "not a lot", "a lot");
      return;
    }
    OwnLot is = found.get();
    check.same("own name", is.ownName(), lot.get("own").asText());
    check.same("species", is.taxon().orElse("null"), lot.get("species").asText());
    check.same("quantity", is.quantity().orElse(-1), lot.get("quantity").asInt());
    check.same("about", is.about(), lot.get("about").asBoolean());
    check.same("place", is.place(), lot.get("place").asText());
    check.same(
        "arrived", is.arrived().map(Object::toString).orElse("null"), lot.get("arrived").asText());
    JsonNode trunk = lot.get("trunk");
    check.near("trunk from", is.trunkFromMm(), trunk.isNull() ? null : trunk.get(0));
    check.near("trunk to", is.trunkToMm(), trunk.isNull() ? null : trunk.get(1));
    if (lot.has("litres")) {
      check.near("litres", is.potLitres(), lot.get("litres"));
    }
    if (lot.has("cost")) {
      check.near("cost", is.unitCost(), lot.get("cost"));
    }
    if (lot.has("price")) {
      check.near("price", is.sellingPrice(), lot.get("price"));
    }
    if (lot.has("lot")) {
      check.same("lot", is.lot(), lot.get("lot").asText());
    }
  }

  private static void compareHeadings(JsonNode expected, ListRead read, List<String> wrong) {
    Map<String, String> ours = new HashMap<>();
    for (HeadingRead head : read.headings()) {
      ours.put(head.heading(), head.ours());
    }
    expected
        .get("headings")
        .properties()
        .forEach(
            each ->
                new Check(wrong, each.getKey())
                    .same(
                        "heading",
                        String.valueOf(ours.get(each.getKey())),
                        each.getValue().asText()));
  }

  private static void compareAccounts(JsonNode expected, ListRead read, List<String> wrong) {
    Map<String, SheetAccount> accounts = new HashMap<>();
    read.accounts().forEach(account -> accounts.put(account.sheet(), account));
    for (JsonNode each : expected.get("ledger")) {
      SheetAccount account = accounts.get(each.get("list").asText());
      Check check = new Check(wrong, account.sheet());
      check.same("titles", account.titles(), each.get("title").asInt());
      check.same("headings", account.headings(), each.get("heading").asInt());
      check.same("headings again", account.headingsAgain(), each.get("heading again").asInt());
      check.same("lots", account.lots(), each.get("lots").asInt());
      check.same("groups", account.groups(), each.get("groups").asInt());
      check.same("totals", account.totals(), each.get("totals").asInt());
      check.same("notes", account.notes(), each.get("notes").asInt());
      check.same("struck", account.struckOut(), each.get("struck").asInt());
      check.same("gone", account.gone(), each.get("gone").asInt());
      check.same("asked", account.asked(), each.get("asked").asInt());
    }
  }
}
