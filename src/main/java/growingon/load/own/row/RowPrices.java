package growingon.load.own.row;

import growingon.load.own.heading.Currencies;
import growingon.load.own.heading.HeadedCells;
import growingon.load.own.heading.HeadingRead;
import growingon.load.own.heading.HeadingWords;
import growingon.load.own.heading.OwnWords;
import growingon.load.own.heading.PriceBreaks;
import growingon.load.own.lot.Draft;
import growingon.load.own.sheet.SheetCell;
import growingon.load.own.sheet.SheetRow;
import growingon.load.own.size.PotSize;
import growingon.load.own.size.SizeGrammar;
import growingon.load.own.size.Span;
import growingon.load.own.text.Keys;
import growingon.load.own.text.MoneyText;
import growingon.load.own.text.Read;
import growingon.load.own.text.Units;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what plants have cost and what they sell for. */
public final class RowPrices {
  private static final Set<String> HUNDREDS =
      Set.of("c", "100", "hundert", "hundred", "cent", "cento");

  /** per 10, je 25. */
  private static final Pattern MANY =
      Pattern.compile("(?:(?:per|je|pro|par|por|a|zu) ?)?(10|20|25|50|100|1000)");

  /** Sold by: what a unit is of the price that is asked, and not of what was paid. */
  private static final Pattern SOLD_BY =
      Pattern.compile(
          "(?:.* )?(?:sold|sell|sells|verkauft?|vendu|venduto|vendido|verkocht)(?: .*)?");

  private static final Set<String> PACKS =
      Set.of(
          "pr", "pair", "pairs", "paar", "paire", "tray", "trays", "2", "doz", "dozen", "12",
          "metre", "meter", "m", "plaque", "caisse", "flat", "flats");
  private static final Set<String> BUNDLES =
      Set.of(
          "bd", "bdl", "bund", "bunde", "bundle", "bundles", "botte", "bottes", "bos", "mazzo",
          "haz");

  /** Below it a price beside bundles is that of a plant. */
  private static final double LEAST_OF_A_BUNDLE = 5;

  private static final Pattern TITLED =
      Pattern.compile(
          "(?i)(?:price|preis|prix|prijs|prezz|precio)\\p{L}*\\s+(?:per|je|pro|par|por|al?|à)\\s+(10|25|50|100|1000)\\b");

  private static final Pattern EACH =
      Pattern.compile(
          "(?iu)\\b(?:each|ea|je|pro stück|chacune?|pièce|per stuk|cad(?:auno)?|cada un[oa])\\b");
  private static final Pattern YEAR = Pattern.compile("(?:20)?(\\d{2})$");

  private final HeadedCells heads;
  private final OwnWords own;
  private final Currencies currencies;

  RowPrices(HeadedCells heads, OwnWords own, Currencies currencies) {
    this.heads = heads;
    this.own = own;
    this.currencies = currencies;
  }

  /** What a plant of a row has cost and sells for. */
  void read(SheetRow row, Draft draft) {
    draft.unitCost = price(row, "unit cost", draft);
    draft.sellingPrice = price(row, "selling price", draft);
    if (draft.unitCost.isEmpty() && draft.quantity.orElse(0) > 0) {
      OptionalDouble whole = price(row, "row cost", draft);
      if (whole.isPresent()) {
        boolean each =
            EACH.matcher(heads.joined(row, "note") + " " + heads.first(row, "row cost")).find();
        draft.unitCost =
            OptionalDouble.of(whole.getAsDouble() / (each ? 1 : draft.quantity.getAsInt()));
      }
    }
    breaks(row, draft);
    String unit = Keys.of(heads.first(row, "count unit"));
    if (draft.perUnit > 1 && mayBeOfBundle(unit, draft.unitCost)) {
      draft.unitCost = ofBundle("unit cost", draft.unitCost, draft);
    }
    if (draft.perUnit > 1 && mayBeOfBundle(unit, draft.sellingPrice)) {
      draft.sellingPrice = ofBundle("selling price", draft.sellingPrice, draft);
    }
    titled(draft);
    double priced =
        HUNDREDS.contains(unit) ? 100 : PACKS.contains(unit) ? draft.perUnit : many(unit);
    if (priced > 1) {
      draft.unitCost = isOfSales() ? draft.unitCost : scaled(draft.unitCost, priced);
      draft.sellingPrice = scaled(draft.sellingPrice, priced);
      draft.breaks.replaceAll((from, price) -> price / priced);
    }
  }

  /** A title that prices what stands below it by the hundred, say. */
  private void titled(Draft draft) {
    Matcher titled = TITLED.matcher(draft.terms);
    if (titled.find() && draft.sellingPrice.isPresent()) {
      draft.sellingPrice = scaled(draft.sellingPrice, Double.parseDouble(titled.group(1)));
      draft.nod(
          "selling price",
          draft.terms,
          "the price is for %s, as the title says".formatted(titled.group(1)));
    }
  }

  /** The price of a bundle may be that of a plant, if it is small. */
  private static boolean mayBeOfBundle(String unit, OptionalDouble price) {
    return BUNDLES.contains(unit) && price.orElse(0) >= LEAST_OF_A_BUNDLE;
  }

  private OptionalDouble ofBundle(String ours, OptionalDouble price, Draft draft) {
    double each = price.getAsDouble() / draft.perUnit;
    draft.ask(
        ours,
        PotSize.plain(price.getAsDouble()),
        "",
        "is that for a plant or for the bundle of %s? type the price of a plant"
            .formatted(PotSize.plain(draft.perUnit)),
        List.of(PotSize.plain(each), PotSize.plain(price.getAsDouble())));
    return OptionalDouble.empty();
  }

  private static double many(String unit) {
    Matcher many = MANY.matcher(unit);
    return many.matches() ? Double.parseDouble(many.group(1)) : 1;
  }

  private boolean isOfSales() {
    return heads.all().stream()
        .anyMatch(
            head -> head.is("count unit") && SOLD_BY.matcher(Keys.of(head.heading())).matches());
  }

  /** Prices that go by how many are bought; one that cannot be read is in the note. */
  private void breaks(SheetRow row, Draft draft) {
    for (HeadingRead head : heads.all()) {
      OptionalInt from = PriceBreaks.from(head);
      Optional<SheetCell> cell = from.isPresent() ? row.cell(head.column()) : Optional.empty();
      if (cell.isEmpty()) {
        continue;
      }
      Optional<MoneyText> money = MoneyText.of(cell.get()).value();
      OptionalDouble amount =
          money.map(each -> currencies.amount(head, each)).orElse(OptionalDouble.empty());
      amount.ifPresentOrElse(
          price -> draft.breaks.put(from.getAsInt(), price),
          () -> draft.note(head.heading() + " " + cell.get().text()));
    }
  }

  private static OptionalDouble scaled(OptionalDouble value, double by) {
    return value.isPresent() ? OptionalDouble.of(value.getAsDouble() / by) : value;
  }

  /** The first filled price; others to the note. No gross price is read as net. */
  private OptionalDouble price(SheetRow row, String ours, Draft draft) {
    OptionalDouble[] found = {OptionalDouble.empty()};
    for (HeadingRead head : byYear(ours)) {
      Optional<SheetCell> cell = row.cell(head.column());
      if (cell.isEmpty()) {
        continue;
      }
      Read<MoneyText> read = MoneyText.of(cell.get());
      if (read.isAsked() && found[0].isEmpty()) {
        draft.ask(ours, cell.get().text(), read.ask());
      } else if (read.value().isPresent() && found[0].isPresent()) {
        second(head, cell.get(), read.value().get(), draft);
      } else if (read.value().isPresent()) {
        OptionalDouble amount = currencies.amount(head, read.value().get());
        if (amount.isPresent()) {
          double many = HeadingWords.pricedFor(head.heading());
          found[0] = OptionalDouble.of(amount.getAsDouble() / (1 + vat(head)) / many);
          if (!read.nod().isEmpty()) {
            draft.nod(ours, cell.get().text(), read.nod());
          }
        } else {
          draft.note(head.heading() + " " + cell.get().text());
        }
      }
    }
    return found[0];
  }

  /** A second price of a supplier for more plants holds from there; any other is a note. */
  private void second(HeadingRead head, SheetCell cell, MoneyText money, Draft draft) {
    int many = HeadingWords.pricedFor(head.heading());
    OptionalDouble amount = currencies.amount(head, money);
    if (own.list().isOffers() && many > 1 && amount.isPresent()) {
      draft.breaks.put(many, amount.getAsDouble() / (1 + vat(head)) / many);
    } else {
      draft.note(head.heading() + " " + cell.text());
    }
  }

  /** The rate of VAT that the grower or the heading has stated for a column with it; else nil. */
  private double vat(HeadingRead head) {
    return head.unit().equals(Units.GROSS) ? rate(head).orElse(0.0) / 100 : 0;
  }

  private Optional<Double> rate(HeadingRead head) {
    return own.find("vat", head.heading())
        .flatMap(rate -> SizeGrammar.bare(rate.replace("%", "")))
        .map(Span::from)
        .or(head::statedVat);
  }

  /** The latest year first, gross prices not before their rate of VAT is known. */
  private List<HeadingRead> byYear(String ours) {
    return latestFirst(
        heads.all().stream()
            .filter(
                head ->
                    head.is(ours) && (!head.unit().equals(Units.GROSS) || rate(head).isPresent()))
            .toList());
  }

  /** Prices by the years that their headings end with, the latest first, else as they stand. */
  public static List<HeadingRead> latestFirst(List<HeadingRead> prices) {
    return prices.stream()
        .sorted(
            (a, b) -> {
              Matcher one = YEAR.matcher(a.heading());
              Matcher other = YEAR.matcher(b.heading());
              return Integer.compare(
                  other.find() ? Integer.parseInt(other.group(1)) : 0,
                  one.find() ? Integer.parseInt(one.group(1)) : 0);
            })
        .toList();
  }
}
