package growingon.load.own.row;

import growingon.load.own.heading.ColumnFacts;
import growingon.load.own.heading.HeadedCells.Filled;
import growingon.load.own.heading.OwnWords;
import growingon.load.own.lot.Draft;
import growingon.load.own.size.PotSize;
import growingon.load.own.size.SizeGrammar;
import growingon.load.own.size.Span;
import growingon.load.own.text.Keys;
import growingon.load.own.text.Units;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the cells of pot columns. */
record RowPots(ColumnFacts facts, OwnWords own) {
  /** Under it the figures are rows of cells in a tray. Common practice, no source. */
  private static final double LEAST_SIDE_CM = 15;

  /** 200mm, 150mm tube, 19cm: what a pot is wide. */
  private static final Pattern WIDTH =
      Pattern.compile("(?i)(?:\\p{L}+\\s+)?(\\d{1,3}(?:[.,]\\d)?)\\s*([mc]m)(?:\\s+\\p{L}+)?");

  private static final int NARROWEST_CM = 1;
  private static final int WIDEST_CM = 100;

  /**
   * M-14, M20: macetas, v. 45: vasi of so many cm, as Spanish and Italian lists have them. Common
   * practice, no source.
   */
  private static final Pattern MACETA = Pattern.compile("(?:M-?|[Vv]\\.?\\s?)(\\d{1,3})");

  /** What stands so under a pot heading is the pot's top, not the plant. */
  private static final Pattern SIDES =
      Pattern.compile("(\\d+(?:[.,]\\d+)?)\\s*[x×]\\s*\\d+(?:[.,]\\d+)?(?:\\s*cm)?");

  private static final Pattern BOX =
      Pattern.compile(
          "(\\p{L}[\\p{L}. -]*?)?\\s*(\\d+(?:[.,]\\d+)?)\\s*[x×]\\s*(\\d+(?:[.,]\\d+)?)(?:\\s*cm\\b)?\\s*(\\p{L}[\\p{L}. -]*)?",
          Pattern.CASE_INSENSITIVE);

  /** 12 inch clay: what a pot is wide. */
  private static final Pattern WIDTH_IN_INCHES =
      Pattern.compile(
          "(\\d+(?:[.,]\\d+)?)\\s*(?:\"|”|''|in|inch|inches)(?:\\s+\\p{L}[\\p{L} ]*)?",
          Pattern.CASE_INSENSITIVE);

  /** 3 -> 10: it was potted on. */
  private static final Pattern MOVED = Pattern.compile("^.*(?:->|→|=>)\\s*(?=\\S)");

  private static final Set<String> DISHES =
      Set.of(
          "schale", "dish", "tray", "schaal", "coupe", "plat", "plateau", "ciotola", "vassoio",
          "bandeja", "cuenco");

  private static final Set<String> VESSELS =
      Set.of(
          "tub",
          "tubs",
          "crate",
          "crates",
          "bucket",
          "buckets",
          "box",
          "boxes",
          "basket",
          "baskets",
          "bag",
          "bags",
          "growbag",
          "sack",
          "barrel",
          "tank",
          "airpot",
          "airpots",
          "planter",
          "trough",
          "kubel",
          "kuebel",
          "kiste",
          "kisten",
          "holzkiste",
          "holzkasten",
          "korb",
          "eimer",
          "bottich",
          "wanne",
          "caisse",
          "caisses",
          "bac",
          "bacs",
          "seau",
          "panier",
          "tonneau",
          "kuip",
          "kuipen",
          "kist",
          "mand",
          "emmer",
          "cassa",
          "casse",
          "cassetta",
          "mastello",
          "secchio",
          "cesto",
          "caja",
          "cajas",
          "cubo",
          "cubos",
          "saco",
          "sacos",
          "cesta",
          "barril");

  private static final Set<String> POT_WORDS =
      Set.of(
          "pot", "pots", "topf", "vaso", "maceta", "godet", "vierkanttopf", "vierkante pot", "p");

  /** The pot, box or form of a cell. */
  void read(Filled cell, Draft draft) {
    String text = cell.text();
    Optional<String> said = own.find("pot", text);
    String now = MOVED.matcher(said.orElse(text)).replaceFirst("");
    if (said.isEmpty() && !now.equals(text)) {
      draft.note(text);
      draft.nod("pot", text, "%s is read as %s".formatted(text, now));
    }
    Optional<Span> bare = SizeGrammar.bare(now);
    if (bare.isEmpty()) {
      if (said.isEmpty() && box(text, draft)) {
        return;
      }
      if (text.strip().equals("M") && facts.hasBalls(cell.head().column())) {
        draft.size.form("root ball");
        return;
      }
      if (width(text, draft)) {
        return;
      }
      Matcher sides = SIDES.matcher(text.strip());
      SizeGrammar.readSize(sides.matches() ? "P" + sides.group(1) : said.orElse(text), draft.size);
      if (draft.size.pot().isEmpty() && draft.size.asks().isEmpty() && isVessel(text)) {
        draft.ask("pot", text, "", "how many litres is it? type as 45 litre, or none", List.of());
      }
      return;
    }
    switch (facts.unit(cell.head().column())) {
      case "litres" -> draft.size.pot(PotSize.ofLitres(bare.get().middle()));
      case "cm" -> draft.size.pot(PotSize.square(bare.get().middle()));
      case "mm" -> draft.size.pot(PotSize.square(bare.get().middle() / 10));
      case "in" -> draft.size.pot(PotSize.roundOf(Math.rint(bare.get().middle() * 2.54)));
      case "gallons" -> draft.size.pot(PotSize.containerClass(bare.get().middle()));
      default ->
          draft.ask(
              "pot",
              text,
              "",
              "is the pot %s litres or %s cm wide?".formatted(text, text),
              List.of(text + " litre", "P" + text));
    }
  }

  /** What a pot is wide, where the cell says nothing else. */
  private static boolean width(String text, Draft draft) {
    Matcher maceta = MACETA.matcher(text.strip());
    if (maceta.matches()) {
      draft.size.pot(PotSize.roundOf(Double.parseDouble(maceta.group(1))));
      draft.nod("pot", text, text + " is the pot's width in cm");
      return true;
    }
    Matcher inches = WIDTH_IN_INCHES.matcher(text.strip());
    if (inches.matches()) {
      double wide = Double.parseDouble(inches.group(1).replace(',', '.'));
      draft.size.pot(PotSize.roundOf(Math.rint(wide * 2.54)));
      return true;
    }
    Matcher width = WIDTH.matcher(text.strip());
    double cm =
        width.matches()
            ? Double.parseDouble(width.group(1).replace(',', '.')) * Units.mm(width.group(2)) / 10
            : 0;
    if (cm < NARROWEST_CM || cm > WIDEST_CM) {
      return false;
    }
    draft.size.pot(PotSize.roundOf(cm));
    draft.nod("pot", text, text + " is the pot's width");
    return true;
  }

  /** Whether it names something to grow in, of which it does not say what it holds. */
  private static boolean isVessel(String text) {
    return Keys.words(Keys.of(text)).stream().anyMatch(VESSELS::contains);
  }

  private static boolean isPot(String words) {
    return Keys.words(words).stream()
        .anyMatch(
            word -> POT_WORDS.contains(word) || word.endsWith("pot") || word.endsWith("topf"));
  }

  /** A box, dish or pot by its two sides: what stands so under a pot heading is no height. */
  private static boolean box(String text, Draft draft) {
    Matcher box = BOX.matcher(text.strip());
    if (!box.matches() || box.group(1) == null && box.group(4) == null) {
      return false;
    }
    String words = Objects.requireNonNullElse(box.group(1), box.group(4));
    double one = Double.parseDouble(box.group(2).replace(',', '.'));
    double other = Double.parseDouble(box.group(3).replace(',', '.'));
    if (isPot(Keys.of(words))) {
      draft.size.pot(PotSize.square(Math.min(one, other)));
      return true;
    }
    if (Math.min(one, other) < LEAST_SIDE_CM) {
      SizeGrammar.readSize(words, draft.size);
      draft.note(text);
      return true;
    }
    boolean shallow = DISHES.contains(Keys.of(words));
    PotSize pot = PotSize.sides(Math.max(one, other), Math.min(one, other), shallow);
    draft.size.pot(pot);
    draft.note(text);
    draft.nod(
        "pot",
        text,
        "%s is taken as %s, which holds %s litres"
            .formatted(text, pot.name(), PotSize.plain(pot.litres())));
    return true;
  }
}
