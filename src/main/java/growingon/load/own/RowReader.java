package growingon.load.own;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a row of a list that is a lot. */
final class RowReader {
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
  private static final Pattern PACK =
      Pattern.compile(
          "(?i)(?:bdl|bd|bund|bundle|tray|vpe|kiste|plaque)s?\\.?\\s*(?:of|à|a|zu|de)?\\s*(\\d+)");
  private static final Pattern NUMBER_ALONE = Pattern.compile("\\d+(?:[.,]\\d+)?");
  private static final Pattern TIMES_ALONE =
      Pattern.compile("(?:^|\\s)[x×]\\s?([0-9]{1,4})(?:$|\\s)");
  private static final Pattern TAGS = Pattern.compile("([0-9]{1,6})\\s*[-–]\\s*([0-9]{1,6})");
  private static final String FORMS = "bare root|root ball|container|cutting|seedling";

  private final String sheet;
  private final List<HeadingRead> heads;
  private final ColumnFacts facts;
  private final double girthFactor;
  private final boolean south;
  private final OwnWords own;

  RowReader(
      String sheet,
      List<HeadingRead> heads,
      ColumnFacts facts,
      double girthFactor,
      boolean south,
      OwnWords own) {
    this.sheet = sheet;
    this.heads = heads;
    this.facts = facts;
    this.girthFactor = girthFactor;
    this.south = south;
    this.own = own;
  }

  /** The lot of a row whose marks for "as above" are filled in. */
  Draft read(SheetRow row, String name, String genus, Optional<PlantMatch> group) {
    Draft draft = new Draft(sheet, row.number());
    draft.ownName = name;
    plant(row, draft, genus, group);
    sizes(row, draft);
    quantity(row, draft);
    dates(row, draft);
    money(row, draft);
    words(row, draft);
    settle(draft);
    return draft;
  }

  /** The lot of a size that is a heading, whose cell is the number of its plants. */
  Draft readSized(
      SheetRow row,
      String name,
      String genus,
      Optional<PlantMatch> group,
      HeadingRead head,
      SheetCell number) {
    Draft draft = new Draft(sheet, row.number());
    draft.ownName = name;
    plant(row, draft, genus, group);
    SizeGrammar.readSize(head.heading(), draft.size);
    sizes(row, draft);
    Read<Integer> read = CountText.of(number);
    if (read.value().isPresent()) {
      draft.about |= read.about();
      draft.quantity = OptionalInt.of(read.value().get());
    } else {
      draft.rowAsked = true;
      draft.ask("quantity", number.text(), read.ask());
    }
    dates(row, draft);
    money(row, draft);
    words(row, draft);
    settle(draft);
    return draft;
  }

  private void each(SheetRow row, String ours, Consumer<Cell> use) {
    for (HeadingRead head : heads) {
      if (head.is(ours)) {
        row.cell(head.column()).ifPresent(cell -> use.accept(new Cell(head, cell)));
      }
    }
  }

  /** A filled cell and its heading. */
  private record Cell(HeadingRead head, SheetCell cell) {
    String text() {
      return cell.text().strip();
    }
  }

  private String first(SheetRow row, String ours) {
    for (HeadingRead head : heads) {
      if (head.is(ours) && !row.text(head.column()).isBlank()) {
        return row.text(head.column()).strip();
      }
    }
    return "";
  }

  private void plant(SheetRow row, Draft draft, String genus, Optional<PlantMatch> group) {
    String own = first(row, "genus");
    String key = own.isEmpty() ? genus : PlantNames.genusOf(Keys.of(own));
    Optional<String> said =
        this.own
            .find("species", draft.ownName)
            .or(() -> this.own.find("species", PlantText.called(draft.ownName)));
    String cultivar = first(row, "cultivar");
    draft.genus = key;
    draft.match =
        said.map(PlantNames.shipped()::saidToBe)
            .orElseGet(() -> find(draft.ownName, key, first(row, "common name")));
    if (!draft.match.isKnown() && group.isPresent()) {
      draft.match = draft.match.isPlant() ? draft.match : group.get();
    }
    draft.calledAs = calledAs(draft, own, key);
    if (!cultivar.isEmpty() && !draft.ownName.contains(cultivar)) {
      draft.ownName = (draft.ownName + " " + quoted(cultivar)).strip();
    }
    each(row, "common name", cell -> draft.note(cell.text()));
    String rootstock = first(row, "rootstock");
    draft.note(rootstock.isEmpty() ? "" : "on " + rootstock);
    doubt(draft);
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
    boolean whole =
        draft.match.isKnown()
            && PlantNames.shipped().find(called, "").taxon().equals(draft.match.taxon());
    if (whole || genus.isEmpty()) {
      return called;
    }
    return draft
        .match
        .taxon()
        .orElse((genusCell.isEmpty() ? capital(genus) : genusCell) + " " + called);
  }

  private static String capital(String word) {
    return word.isEmpty()
        ? word
        : word.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + word.substring(1);
  }

  private static void doubt(Draft draft) {
    String key = Keys.of(draft.ownName);
    boolean two =
        draft.ownName.matches(".*\\p{L}{3,}\\s*/\\s*\\p{L}{3,}.*") && !draft.match.isKnown();
    if (draft.ownName.contains("?")
        || DOUBTS.stream().anyMatch(word -> (" " + key + " ").contains(" " + word + " "))
        || two) {
      draft.ask("species", draft.ownName, "which plant is it?");
      draft.match =
          PlantMatch.several(draft.match.taxon().map(List::of).orElse(draft.match.candidates()));
    }
  }

  private void sizes(SheetRow row, Draft draft) {
    if (heads.stream().map(head -> row.text(head.column())).anyMatch(SizeGrammar::saysStandard)
        || SizeGrammar.saysStandard(draft.ownName)) {
      draft.size.standard();
    }
    each(row, "pot", cell -> pot(cell, draft));
    each(row, "trunk mm", cell -> trunk(cell, draft));
    each(row, "girth cm", cell -> girth(cell, draft));
    each(row, "height cm", cell -> height(cell, draft));
    each(row, "height x width", cell -> SizeGrammar.readSize(cell.text(), draft.size));
    each(row, "size", cell -> size(cell, draft));
    bounds(row, draft);
    each(row, "age", cell -> age(cell, draft));
    for (String words : List.of("quality word", "form", "habit")) {
      each(row, words, cell -> formWords(cell, draft));
    }
    SizeParts named = new SizeParts();
    SizeGrammar.readName(draft.ownName, named);
    takeMissing(named, draft.size);
    each(row, "note", cell -> noteWords(cell.text(), draft));
  }

  /** What the name says of the size counts where nothing else says it. */
  private static void takeMissing(SizeParts named, SizeParts size) {
    named.pot().filter(pot -> size.pot().isEmpty()).ifPresent(size::pot);
    if (!size.hasSize()) {
      named.trunkMm().ifPresent(size::trunk);
      named.girthCm().ifPresent(size::girth);
      named.heightCm().ifPresent(size::height);
      named.pending().ifPresent(size::open);
    }
    named.form().ifPresent(size::form);
    named.years().ifPresent(size::age);
  }

  private static void noteWords(String text, Draft draft) {
    if (draft.size.pot().isEmpty()) {
      SizeParts parts = new SizeParts();
      SizeGrammar.pots(text, parts);
      parts
          .pot()
          .filter(pot -> parts.asks().isEmpty() && pot.litres() > 0.2)
          .ifPresent(draft.size::pot);
    }
    SizeParts roots = new SizeParts();
    SizeGrammar.roots(text, roots);
    roots.form().ifPresent(draft.size::form);
  }

  private void pot(Cell cell, Draft draft) {
    String text = cell.text();
    Optional<String> said = own.find("pot", text);
    Optional<Span> bare = SizeGrammar.bare(said.orElse(text));
    if (bare.isEmpty()) {
      SizeGrammar.readSize(said.orElse(text), draft.size);
      return;
    }
    switch (facts.unit(cell.head.column())) {
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

  private void trunk(Cell cell, Draft draft) {
    Optional<Span> bare = SizeGrammar.bare(cell.text());
    String unit = facts.unit(cell.head.column());
    if (dateSize(cell, draft)) {
      return;
    }
    if (bare.isEmpty()) {
      measure(cell, draft);
    } else if (unit.equals(Units.ASK)) {
      draft.ask(
          "trunk mm",
          cell.text(),
          "in which unit is %s? mm, cm, or cm of girth".formatted(cell.text()));
    } else {
      draft.size.trunk(bare.get().times(Units.mm(unit)));
    }
  }

  private void girth(Cell cell, Draft draft) {
    Optional<Span> bare = SizeGrammar.bare(cell.text());
    String unit = Units.isLength(cell.head.unit()) ? cell.head.unit() : "cm";
    if (dateSize(cell, draft)) {
      return;
    }
    if (bare.isEmpty()) {
      Matcher inCm =
          Pattern.compile("(\\d+(?:[.,]\\d+)?)(?:\\s*[-–/]\\s*(\\d+(?:[.,]\\d+)?))?\\s*cm")
              .matcher(cell.text());
      if (inCm.matches()) {
        SizeGrammar.bare(cell.text().replaceAll("\\s*cm", "")).ifPresent(draft.size::girth);
      } else {
        draft.size.standard();
        measure(cell, draft);
      }
    } else {
      draft.size.girth(bare.get().times(Units.mm(unit) / 10));
    }
  }

  /** 6-Aug in a size cell is the class 6-8 that a spreadsheet made a date. */
  private boolean dateSize(Cell cell, Draft draft) {
    if (cell.cell.date().isEmpty()) {
      return false;
    }
    int day = cell.cell.date().get().getDayOfMonth();
    int month = cell.cell.date().get().getMonthValue();
    int year = cell.cell.date().get().getYear() % 100;
    int other = day == 1 && cell.cell.yearShown() ? year : day;
    Span span = Span.of(Math.min(other, month), Math.max(other, month));
    if (span.isGirthClass()) {
      if (cell.head.is("trunk mm")) {
        draft.size.trunk(
            span.times(
                Units.isLength(facts.unit(cell.head.column()))
                    ? Units.mm(facts.unit(cell.head.column()))
                    : 1));
      } else if (cell.head.is("girth cm")) {
        draft.size.girth(span);
      } else {
        draft.size.open(span);
      }
      draft.nod(
          "size", cell.text(), "%s is read as %s".formatted(cell.text(), SizeParts.shown(span)));
    } else {
      draft.ask("trunk mm", cell.text(), "which size is it? a spreadsheet made it a date");
    }
    return true;
  }

  private static void measure(Cell cell, Draft draft) {
    String rest =
        SizeGrammar.pots(SizeGrammar.readMeasure(cell.text(), draft.size), draft.size).strip();
    if (rest.matches(".*\\d.*") || rest.matches(".*\\p{L}{3}.*")) {
      SizeGrammar.readSize(rest, draft.size);
    }
  }

  private void height(Cell cell, Draft draft) {
    Optional<Span> bare = SizeGrammar.bare(cell.text());
    String unit = facts.unit(cell.head.column());
    if (dateSize(cell, draft)) {
      return;
    }
    if (bare.isEmpty()) {
      measure(cell, draft);
    } else if (unit.equals(Units.ASK)) {
      draft.ask(
          "height left mm", cell.text(), "in which unit is the height %s?".formatted(cell.text()));
    } else {
      boolean metres =
          unit.equals("cm")
              && bare.get().to() < 10
              && (bare.get().pointed() || facts.mixesMetres(cell.head.column()));
      draft.size.height(bare.get().times(metres ? 100 : Units.mm(unit) / 10));
    }
  }

  private void size(Cell cell, Draft draft) {
    if (dateSize(cell, draft)) {
      return;
    }
    String text = cell.text();
    Optional<Span> bare = SizeGrammar.bare(text);
    String unit = cell.head.unit();
    if (bare.isPresent() && Units.isLength(unit) && !unit.equals("cm")) {
      draft.size.height(bare.get().times(Units.mm(unit) / 10));
    } else if (bare.isPresent() && unit.equals("litres")) {
      draft.size.pot(PotSize.ofLitres(bare.get().middle()));
    } else if (bare.isPresent()
        && !bare.get().isClass()
        && !bare.get().pointed()
        && !text.contains("+")) {
      draft.ask("size", text, "what is the size %s?".formatted(text));
    } else if (bare.isPresent() && !bare.get().isClass() && bare.get().pointed()) {
      draft.size.height(bare.get().times(bare.get().from() < 10 ? 100 : 1));
    } else {
      SizeGrammar.readSize(text, draft.size);
    }
  }

  private void bounds(SheetRow row, Draft draft) {
    bound(row, "trunk from mm", "trunk to mm", 10).ifPresent(draft.size::trunk);
    bound(row, "girth from cm", "girth to cm", 1).ifPresent(draft.size::girth);
  }

  private Optional<Span> bound(SheetRow row, String low, String high, double base) {
    OptionalDouble from = length(row, low);
    OptionalDouble to = length(row, high);
    if (from.isEmpty() && to.isEmpty()) {
      return Optional.empty();
    }
    double least = from.orElse(to.orElse(0));
    double most = to.orElse(least);
    Span mm = Span.of(Math.min(least, most), Math.max(least, most));
    return Optional.of(base == 10 ? mm : mm.times(0.1));
  }

  private OptionalDouble length(SheetRow row, String ours) {
    for (HeadingRead head : heads) {
      if (head.is(ours)) {
        Optional<Span> bare =
            row.cell(head.column()).flatMap(cell -> SizeGrammar.bare(cell.text()));
        String unit =
            Units.isLength(facts.unit(head.column()))
                ? facts.unit(head.column())
                : ours.endsWith("mm") ? "mm" : "cm";
        if (bare.isPresent()) {
          return OptionalDouble.of(bare.get().from() * Units.mm(unit));
        }
      }
    }
    return OptionalDouble.empty();
  }

  private static void age(Cell cell, Draft draft) {
    if (NUMBER_ALONE.matcher(cell.text()).matches()) {
      int years = (int) Math.rint(Double.parseDouble(cell.text().replace(',', '.')));
      if (years < 100) {
        draft.size.age(years);
      }
      draft.note(cell.head.heading() + " " + cell.text());
    } else {
      SizeGrammar.readSize(cell.text(), draft.size);
    }
  }

  private static void formWords(Cell cell, Draft draft) {
    String key = Keys.of(cell.text());
    for (String form : FORMS.split("\\|")) {
      if (key.equals(form) || key.equals(form + "s")) {
        draft.form = form;
        return;
      }
    }
    if (Set.of("containerised", "container grown", "cg", "pot grown", "potted", "containerpflanze")
        .contains(key)) {
      draft.form = "container";
      return;
    }
    draft.note(SizeGrammar.readWords(cell.text(), draft.size));
  }

  private void settle(Draft draft) {
    SizeParts size = draft.size;
    size.settle();
    size.asks()
        .forEach(
            ask ->
                draft.ask(
                    ask.substring(0, Math.max(0, ask.indexOf(':'))),
                    ask.substring(ask.indexOf(':') + 1).strip(),
                    ask));
    size.nods().forEach(nod -> draft.nod("size", "", nod));
    size.notes().forEach(draft::note);
    Optional<Span> trunk = size.trunkMm();
    if (trunk.isPresent() && size.girthCm().isPresent()) {
      draft.note("girth " + SizeParts.shown(size.girthCm().get()) + " cm");
    }
    Optional<Span> mm =
        trunk.or(() -> size.girthCm().map(cm -> cm.times(10 / Math.PI * girthFactor)));
    mm.filter(span -> span.from() > 0 && span.to() <= 2000)
        .ifPresent(
            span -> {
              draft.trunkFrom = OptionalDouble.of(span.from());
              draft.trunkTo = OptionalDouble.of(span.to());
            });
    size.heightCm().ifPresent(cm -> draft.height = OptionalDouble.of(cm.middle()));
  }

  private void quantity(SheetRow row, Draft draft) {
    List<Read<Integer>> reads = new ArrayList<>();
    List<String> texts = new ArrayList<>();
    each(
        row,
        "quantity",
        cell -> {
          reads.add(CountText.isGone(cell.cell) ? Read.of(0) : CountText.of(cell.cell));
          texts.add(cell.text());
          draft.quantityIsText |= cell.cell.isText();
        });
    Read<Integer> packed = packs(row, draft);
    if (packed.value().isPresent()) {
      reads.add(packed);
      texts.add("packs");
    }
    if (reads.isEmpty() && heads.stream().anyMatch(head -> head.is(Columns.PLANT_A_ROW))) {
      reads.add(Read.of(plantsOfRow(row)));
      texts.add(first(row, "lot"));
    }
    if (reads.isEmpty()) {
      draft.rowAsked = true;
      draft.ask("quantity", "", "how many plants are these?");
      return;
    }
    Read<Integer> read = lowest(reads, texts, draft);
    if (read.isAsked()) {
      draft.rowAsked = true;
      draft.ask("quantity", texts.get(0), read.ask());
      return;
    }
    draft.about |= read.about();
    if (!read.nod().isEmpty()) {
      draft.nod("quantity", texts.get(0), read.nod());
    }
    draft.note(read.note());
    takeQuantity(row, read.value().orElse(0), texts.get(0), draft);
  }

  /** One plant, or as many as its tags or an x8 say. */
  private int plantsOfRow(SheetRow row) {
    for (HeadingRead head : heads) {
      Matcher times = TIMES_ALONE.matcher(row.text(head.column()));
      if (times.find()) {
        return Integer.parseInt(times.group(1));
      }
    }
    Matcher tags = TAGS.matcher(first(row, "lot"));
    return tags.matches()
        ? Math.max(1, Integer.parseInt(tags.group(2)) - Integer.parseInt(tags.group(1)) + 1)
        : 1;
  }

  /** Two numbers in a row that differ are asked; the lower holds till then. */
  private static Read<Integer> lowest(List<Read<Integer>> reads, List<String> texts, Draft draft) {
    Read<Integer> best = reads.get(0);
    for (Read<Integer> read : reads) {
      boolean lower =
          read.value().isPresent()
              && best.value().isPresent()
              && read.value().get() < best.value().get();
      best = best.isAsked() || lower ? read : best;
    }
    boolean differ =
        reads.stream().map(Read::value).flatMap(Optional::stream).distinct().count() > 1;
    if (differ && best.value().orElse(0) > 0) {
      draft.ask(
          "quantity",
          String.join(" and ", texts),
          Integer.toString(best.value().get()),
          "which number holds: %s?".formatted(String.join(" or ", texts)),
          texts);
    }
    return best;
  }

  private Read<Integer> packs(SheetRow row, Draft draft) {
    OptionalInt packs = count(row, "packs");
    OptionalInt each = count(row, "per pack");
    boolean counted = heads.stream().anyMatch(head -> head.is("quantity"));
    if (packs.isEmpty() || (each.isEmpty() && counted)) {
      return Read.none();
    }
    if (each.isEmpty()) {
      return Read.none();
    }
    draft.note("%d x %d".formatted(packs.getAsInt(), each.getAsInt()));
    return Read.of(packs.getAsInt() * each.getAsInt());
  }

  private OptionalInt count(SheetRow row, String ours) {
    for (HeadingRead head : heads) {
      Optional<Integer> value =
          head.is(ours)
              ? row.cell(head.column()).flatMap(cell -> CountText.of(cell).value())
              : Optional.empty();
      if (value.isPresent()) {
        return OptionalInt.of(value.get());
      }
    }
    return OptionalInt.empty();
  }

  private void takeQuantity(SheetRow row, int number, String found, Draft draft) {
    String unit = Keys.of(first(row, "count unit"));
    double each = perUnit(unit, row, draft);
    if (each == 0) {
      draft.rowAsked = true;
      draft.ask(
          "quantity",
          found + " " + first(row, "count unit"),
          "how many plants are in one %s?".formatted(first(row, "count unit")));
      return;
    }
    draft.perUnit = each;
    draft.quantity = OptionalInt.of((int) Math.min(CountText.MOST, Math.rint(number * each)));
    if (each > 1) {
      draft.nod(
          "quantity",
          found,
          "%s of %s plants".formatted(first(row, "count unit"), PotSize.plain(each)));
    }
    beforeOrAfter(row, draft);
    each(
        row,
        "kept",
        cell ->
            CountText.of(cell.cell())
                .value()
                .ifPresent(
                    value ->
                        draft.kept =
                            OptionalInt.of(Math.min(value, draft.quantity.orElse(value)))));
    each(row, "reserved", cell -> draft.note(cell.text() + " reserved"));
  }

  /** Plants in one of the unit; 0 where the list does not say. */
  private double perUnit(String unit, SheetRow row, Draft draft) {
    if (unit.isEmpty()
        || unit.matches(
            "ea|each|st|stk|stuck|stueck|pc|pcs|pz|ud|uds|no|plant|plants|piece|1|c|100|unit|u|stuks|pce")) {
      return 1;
    }
    if (unit.matches("pr|pair|pairs|paar|paire|2")) {
      return 2;
    }
    if (unit.matches("doz|dozen|12|dz")) {
      return 12;
    }
    OptionalInt packed = count(row, "per pack");
    if (packed.isPresent()) {
      return packed.getAsInt();
    }
    Matcher said = PACK.matcher(first(row, "note"));
    return said.find() ? Double.parseDouble(said.group(1)) : 0;
  }

  /** A number beside what was sold or lost may be the one before or after. */
  private void beforeOrAfter(SheetRow row, Draft draft) {
    each(row, "sold", cell -> draft.note(cell.text() + " sold"));
    each(row, "lost", cell -> draft.note(cell.text() + " lost"));
  }

  private void dates(SheetRow row, Draft draft) {
    each(
        row,
        "arrived",
        cell -> {
          Read<YearMonth> read = month(cell);
          if (read.isAsked()) {
            draft.ask("arrived", cell.text(), read.ask());
          } else if (draft.arrived.isEmpty()) {
            draft.arrived = read.value();
            draft.arrivedAbout = read.about();
          }
        });
    each(
        row,
        "potted",
        cell -> month(cell).value().ifPresent(month -> draft.potted = Optional.of(month)));
  }

  private Read<YearMonth> month(Cell cell) {
    return new MonthText(facts.dayFirst(cell.head.column()), south).of(cell.cell);
  }

  private void money(SheetRow row, Draft draft) {
    draft.unitCost = price(row, "unit cost", draft);
    draft.sellingPrice = price(row, "selling price", draft);
    if (draft.unitCost.isEmpty() && draft.quantity.orElse(0) > 0) {
      OptionalDouble whole = price(row, "row cost", draft);
      if (whole.isPresent()) {
        draft.unitCost = OptionalDouble.of(whole.getAsDouble() / draft.quantity.getAsInt());
      }
    }
    String unit = Keys.of(first(row, "count unit"));
    double priced =
        unit.matches("c|100")
            ? 100
            : unit.matches("pr|pair|pairs|paar|paire|tray|trays|2|doz|dozen|12")
                ? draft.perUnit
                : 1;
    if (priced > 1) {
      draft.unitCost = scaled(draft.unitCost, priced);
      draft.sellingPrice = scaled(draft.sellingPrice, priced);
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
        draft.note(head.heading() + " " + cell.get().text());
      } else if (read.value().isPresent()) {
        found[0] = OptionalDouble.of(read.value().get().amount() / (1 + vat(head)));
      }
    }
    return found[0];
  }

  /** The rate of VAT that the grower has stated for a column with it; nil where none is. */
  private double vat(HeadingRead head) {
    return head.unit().equals(Units.GROSS)
        ? own.find("vat", head.heading())
            .flatMap(rate -> SizeGrammar.bare(rate.replace("%", "")))
            .map(rate -> rate.from() / 100)
            .orElse(0.0)
        : 0;
  }

  /** The latest year first, gross prices not before their rate of VAT is known. */
  private List<HeadingRead> byYear(String ours) {
    Pattern year = Pattern.compile("(?:20)?(\\d{2})$");
    return heads.stream()
        .filter(head -> head.is(ours) && (!head.unit().equals(Units.GROSS) || vat(head) > 0))
        .sorted(
            (a, b) -> {
              Matcher one = year.matcher(a.heading());
              Matcher other = year.matcher(b.heading());
              return Integer.compare(
                  other.find() ? Integer.parseInt(other.group(1)) : 0,
                  one.find() ? Integer.parseInt(one.group(1)) : 0);
            })
        .toList();
  }

  private void words(SheetRow row, Draft draft) {
    draft.code = first(row, "lot");
    draft.place = places(row, draft);
    draft.supplier = first(row, "supplier");
    draft.passport = first(row, "passport");
    draft.origin = first(row, "origin");
    each(row, "note", cell -> draft.note(cell.text()));
    each(row, "other price", cell -> draft.note(cell.head.heading() + " " + cell.text()));
    each(row, "clear stem", cell -> draft.note("clear stem " + cell.text()));
    each(row, "crown mm", cell -> draft.note(cell.head.heading() + " " + cell.text()));
    for (String text : List.copyOf(draft.notes)) {
      if (text.contains("?")) {
        draft.ask(
            "quantity",
            text,
            draft.quantity.isPresent() ? Integer.toString(draft.quantity.getAsInt()) : "",
            "is the number right? the note says: %s".formatted(text),
            List.of());
      }
    }
  }

  private String places(SheetRow row, Draft draft) {
    List<String> names = new ArrayList<>();
    each(row, "place", cell -> names.add(cell.text()));
    List<String> details = new ArrayList<>();
    each(row, "place detail", cell -> details.add(cell.text()));
    boolean hasPlace = heads.stream().anyMatch(head -> head.is("place"));
    if (!hasPlace) {
      names.addAll(details);
    } else {
      details.forEach(draft::note);
    }
    String place = String.join(", ", names);
    return own.find("place", place).orElse(place);
  }
}
