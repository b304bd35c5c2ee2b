package growingon.load.own.row;

import growingon.load.own.heading.ColumnFacts;
import growingon.load.own.heading.Currencies;
import growingon.load.own.heading.HeadedCells;
import growingon.load.own.heading.HeadedCells.Filled;
import growingon.load.own.heading.HeadingRead;
import growingon.load.own.heading.OwnWords;
import growingon.load.own.lot.Draft;
import growingon.load.own.lot.Site;
import growingon.load.own.plant.PlantMatch;
import growingon.load.own.plant.PlantNames;
import growingon.load.own.plant.PlantText;
import growingon.load.own.sheet.SheetCell;
import growingon.load.own.sheet.SheetRow;
import growingon.load.own.size.SizeGrammar;
import growingon.load.own.stated.ArrivalCells;
import growingon.load.own.stated.StatedCells;
import growingon.load.own.text.CountText;
import growingon.load.own.text.Keys;
import growingon.load.own.text.Read;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.lang3.StringUtils;

/** Reads a row of a list that is a lot. */
final class RowReader {
  private static final Pattern TWO_NAMES = Pattern.compile("\\p{L}{3,}\\s*/\\s*\\p{L}{3,}");

  /** Osmanthus heterophyllus: it has a genus of its own, whatever a title above may say. */
  private static final Pattern BINOMIAL =
      Pattern.compile("\\p{Lu}\\p{Ll}{2,}\\s+(?:[x×]\\s*)?\\p{Ll}{3,}");

  /** 12 Acer palmatum; 3 stem birch and 2 yr larch are no numbers of plants. */
  private static final Pattern COUNTED =
      Pattern.compile(
          "(?i)(\\d{1,4})\\s+(?!(?:stems?|tiers?|yrs?|years?|lit|ltr|cm|mm|jahr|ans|jaar|anni|etage|st(?:ü|ue)ck|st\\b))(\\p{L}{3}.*)");

  private static final Pattern MARKED = Pattern.compile("([*#†‡•+~°]+)\\s*(\\p{L}.*)");
  private static final Set<String> REMARKS = Set.of("note", "quality word", "habit", "form");
  private static final Set<String> DOUBTS =
      Set.of(
          "mixed",
          "unknown",
          "unklar",
          "assorted",
          "unbekannt",
          "label lost",
          "gemischt",
          "inconnu",
          "onbekend",
          "misto");

  private final String sheet;
  private final HeadedCells heads;
  private final ColumnFacts facts;
  private final Site site;
  private final OwnWords own;
  private final RowSizes sizes;
  private final RowCounts counts;
  private final RowPrices prices;
  private final RowTerms terms;
  private final StatedCells stated;
  private final ArrivalCells arrivals;

  RowReader(
      String sheet,
      List<HeadingRead> heads,
      ColumnFacts facts,
      Site site,
      OwnWords own,
      boolean soldOff,
      Currencies currencies) {
    this.sheet = sheet;
    this.heads = new HeadedCells(heads);
    this.facts = facts;
    this.site = site;
    this.own = own;
    this.sizes = new RowSizes(this.heads, facts, site, own);
    this.counts = new RowCounts(this.heads, own, soldOff, facts);
    this.terms = new RowTerms(this.heads);
    this.stated = new StatedCells(this.heads, facts, site, own);
    this.arrivals = new ArrivalCells(this.heads, facts, site, own);
    this.prices = new RowPrices(this.heads, own, currencies);
  }

  /** The lot of a row whose marks for "as above" are filled in. */
  Draft read(SheetRow row, String name, Group group) {
    Draft draft = new Draft(sheet, row.number());
    name(name, draft);
    draft.terms = group.terms();
    plant(row, draft, group.genus(), group.species());
    sizes.read(row, draft);
    sizes.under(group.size(), draft);
    counts.read(row, draft);
    arrivals.read(row, draft);
    prices.read(row, draft);
    words(row, draft);
    if (!own.list().isOffers()) {
      arrivals.readRemarks(row, draft);
    }
    sizes.settle(draft);
    if (own.list().isOffers()) {
      terms.read(row, draft);
    }
    stated.read(row, draft);
    return draft;
  }

  /** Whether what stands for a name is the heading of prices. */
  boolean saysPrices(String name) {
    return own.saysPrices(name);
  }

  /** The lot of a size that is a heading, whose cell is the number of its plants. */
  Draft readSized(SheetRow row, String name, Group group, HeadingRead head, SheetCell number) {
    Draft draft = new Draft(sheet, row.number());
    name(name, draft);
    draft.terms = group.terms();
    draft.sizeColumn = OptionalInt.of(head.column());
    plant(row, draft, group.genus(), group.species());
    SizeGrammar.readSize(head.heading(), draft.size);
    sizes.read(row, draft);
    Read<Integer> read = CountText.of(number);
    if (read.value().isPresent()) {
      if (read.about()) {
        draft.about = true;
        draft.about(number.text());
      }
      draft.quantity = OptionalInt.of(read.value().get());
    } else {
      draft.rowAsked = true;
      draft.ask("quantity", number.text(), read.ask());
    }
    arrivals.read(row, draft);
    prices.read(row, draft);
    words(row, draft);
    sizes.settle(draft);
    stated.read(row, draft);
    return draft;
  }

  /** A name without the number of plants that may stand before it. */
  static String withoutNumber(String name) {
    Matcher counted = COUNTED.matcher(name);
    return counted.matches() ? counted.group(2) : name;
  }

  /** The plant's name; a mark before it, which may be explained elsewhere, goes to the note. */
  private static void name(String name, Draft draft) {
    Matcher marked = MARKED.matcher(name);
    draft.ownName = marked.matches() ? marked.group(2) : name;
    draft.note(marked.matches() ? "marked " + marked.group(1) : "");
    Matcher counted = COUNTED.matcher(draft.ownName);
    if (counted.matches()) {
      draft.ownName = counted.group(2);
      draft.namedNumber = OptionalInt.of(Integer.parseInt(counted.group(1)));
    }
  }

  /** Whether a remark says that all plants of a row are sold, ordered only, or dead. */
  boolean hasDeparted(SheetRow row) {
    return !own.list().isOffers()
        && heads.all().stream()
            .filter(head -> REMARKS.contains(head.ours()))
            .map(head -> row.text(head.column()))
            .anyMatch(
                remark ->
                    Departed.of(remark) == Departed.ALL
                        && !(Departed.isOrder(remark) && arrivals.hasCome(row)));
  }

  /** What a row says of when its plants came. */
  ArrivalCells arrivals() {
    return arrivals;
  }

  /** Whether a title says in which pot or form a supplier sells what stands below it. */
  boolean readsSizeOf(String title) {
    return own.list().isOffers() && RowSizes.ofTitle(title).isPresent();
  }

  private void plant(SheetRow row, Draft draft, String genus, Optional<PlantMatch> group) {
    String cultivar = cultivar(row, draft);
    String own = heads.first(row, "genus");
    String key = own.isEmpty() ? genus : PlantNames.genusOf(Keys.of(own));
    Optional<String> said =
        this.own
            .find("species", draft.ownName)
            .or(() -> this.own.find("species", PlantText.called(draft.ownName)));
    draft.genus = key;
    PlantMatch read = find(withCultivar(draft, cultivar), key, heads.first(row, "common name"));
    draft.match =
        said.map(PlantNames.shipped()::saidToBe)
            .filter(word -> !read.isKnown() || !word.taxon().equals(read.taxon()))
            .orElse(read);
    if (!draft.match.isKnown() && group.isPresent()) {
      draft.match = draft.match.isPlant() ? draft.match : group.get();
    }
    draft.calledAs = calledAs(draft, own, key);
    if (!cultivar.isEmpty() && !draft.ownName.contains(cultivar)) {
      draft.ownName = (draft.ownName + " " + quoted(cultivar)).strip();
    }
    heads.each(row, "common name", cell -> draft.note(cell.text()));
    String rootstock = heads.first(row, "rootstock");
    if (rootstock.equals(draft.ownName)) {
      draft.nod("species", rootstock, "what stands under rootstock alone is the rootstock itself");
    } else {
      draft.note(rootstock.isEmpty() ? "" : "on " + rootstock);
    }
    nodded(draft);
    doubt(draft);
  }

  /** A genus alone, or an epithet that may be another's, is taken till somebody says no. */
  private void nodded(Draft draft) {
    if (draft.match.how() == PlantMatch.How.NODDED) {
      String called = PlantText.called(draft.ownName);
      String said = "%s is read as %s".formatted(called, draft.match.taxon().orElseThrow());
      if (own.refuses("species", said)) {
        draft.match = draft.match.refused();
      } else {
        draft.nod("species", called, said);
      }
    }
  }

  /**
   * The cultivar; the second half of a common name, as in Orme | champêtre, is part of the name,
   * and words without quotes among quoted cultivars are a form.
   */
  private String cultivar(SheetRow row, Draft draft) {
    String[] cultivar = {heads.first(row, "cultivar")};
    PlantMatch both = PlantNames.shipped().find(draft.ownName + " " + cultivar[0], "");
    PlantMatch alone = PlantNames.shipped().find(draft.ownName, "");
    boolean second =
        Pattern.matches("\\p{Ll}.*", cultivar[0])
            && !draft.ownName.contains(cultivar[0])
            && both.how() == PlantMatch.How.CERTAIN
            && PlantNames.shipped().isName(draft.ownName + " " + cultivar[0]);
    if (second) {
      draft.ownName = draft.ownName + " " + cultivar[0];
      return alone.equals(both) ? "" : cultivar[0];
    }
    heads.each(
        row,
        "cultivar",
        cell -> {
          if (facts.hasQuotes(cell.head().column()) && cell.text().matches("\\p{Ll}.*")) {
            draft.note(SizeGrammar.readWords(cell.text(), draft.size));
            cultivar[0] = "";
          }
        });
    return cultivar[0];
  }

  private static String withCultivar(Draft draft, String cultivar) {
    return cultivar.isEmpty() || draft.ownName.contains(cultivar)
        ? draft.ownName
        : draft.ownName + " " + quoted(cultivar);
  }

  private static String quoted(String cultivar) {
    return cultivar.matches("['\"‘“].*") ? cultivar : "'" + cultivar + "'";
  }

  private static PlantMatch find(String name, String genus, String common) {
    PlantMatch match = PlantNames.shipped().find(name, genus);
    if (match.isKnown() || common.isEmpty()) {
      return match;
    }
    PlantMatch other = PlantNames.shipped().find(common, genus);
    return other.isKnown() ? other : match;
  }

  /** A species by its epithet alone is called with its genus. */
  private static String calledAs(Draft draft, String genusCell, String genus) {
    String called = PlantText.called(draft.ownName);
    boolean whole = draft.match.isMeantBy(called);
    boolean itsOwn = !PlantNames.shipped().isGenus(genus) && BINOMIAL.matcher(called).lookingAt();
    if (whole || genus.isEmpty() || itsOwn || (Keys.of(called) + " ").startsWith(genus + " ")) {
      return PlantText.withoutRemark(called, draft.match);
    }
    return draft
        .match
        .taxon()
        .orElse((genusCell.isEmpty() ? StringUtils.capitalize(genus) : genusCell) + " " + called);
  }

  private static void doubt(Draft draft) {
    boolean two = TWO_NAMES.matcher(draft.ownName).find() && !draft.match.isKnown();
    if (isDoubtful(draft.ownName) || two) {
      draft.ask("species", draft.ownName, "which plant is it?");
      draft.match =
          PlantMatch.several(draft.match.taxon().map(List::of).orElse(draft.match.candidates()));
    }
  }

  private void words(SheetRow row, Draft draft) {
    draft.code = heads.first(row, "lot");
    draft.sizeText = heads.joined(row, "size", "pot", "girth cm", "height cm", "trunk mm");
    draft.place = places(row, draft);
    draft.supplier = heads.first(row, "supplier");
    draft.passport = heads.first(row, "passport");
    draft.origin = heads.first(row, "origin");
    heads.each(row, "note", cell -> draft.note(noted(cell)));
    heads.each(row, "other price", cell -> draft.note(cell.head().heading() + " " + cell.text()));
    heads.each(row, "clear stem", cell -> draft.note("clear stem " + cell.text()));
    heads.each(row, "crown mm", cell -> draft.note(cell.head().heading() + " " + cell.text()));
    kept(heads.joined(row, "selling price"), draft);
    List<String> some = new ArrayList<>();
    REMARKS.forEach(
        ours ->
            heads.each(
                row,
                ours,
                cell -> {
                  if (Departed.of(cell.text()) == Departed.SOME) {
                    some.add(cell.text());
                  }
                }));
    for (String text : List.copyOf(draft.notes)) {
      if (isDoubtful(text) || some.contains(text)) {
        draft.ask(
            "quantity",
            text,
            draft.quantity.isPresent() ? Integer.toString(draft.quantity.getAsInt()) : "",
            "is the number right? the note says: %s".formatted(text),
            List.of());
      }
    }
  }

  /** What stands somewhere private is stock all the same, till it is said not to be. */
  private static void kept(String price, Draft draft) {
    Stream.concat(Stream.of(draft.place, price, draft.terms), draft.notes.stream())
        .filter(
            text ->
                RowWords.isNotForSale(text)
                    || text.equals(draft.place) && Keys.of(text).equals("own"))
        .findFirst()
        .ifPresent(
            text ->
                draft.ask(
                    "quantity",
                    text,
                    draft.quantity.isPresent() ? Integer.toString(draft.quantity.getAsInt()) : "",
                    "are these to be sold? type 0 if not",
                    List.of()));
  }

  /** A figure alone says nothing without its heading. */
  private static String noted(Filled cell) {
    return cell.text().matches("[0-9.,]+")
        ? cell.head().heading() + " " + cell.text()
        : cell.text();
  }

  private static boolean isDoubtful(String text) {
    String key = " " + Keys.of(text) + " ";
    return text.contains("?") || DOUBTS.stream().anyMatch(word -> key.contains(" " + word + " "));
  }

  private boolean hasPlace() {
    return heads.has("place");
  }

  private String places(SheetRow row, Draft draft) {
    List<String> names = new ArrayList<>();
    heads.each(row, "place", cell -> names.add(cell.text()));
    List<String> details = new ArrayList<>();
    heads.each(row, "place detail", cell -> details.add(noted(cell)));
    if (!hasPlace()) {
      draft.placeIsDetail = true;
      names.addAll(details);
    } else {
      details.forEach(draft::note);
    }
    String place = String.join(", ", names);
    String cells = heads.joined(row, "place", "place detail");
    return own.find("place", place).or(() -> own.find("place", cells)).orElse(place);
  }
}
