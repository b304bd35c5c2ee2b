package growingon.load.own.row;

import growingon.load.own.heading.ColumnFacts;
import growingon.load.own.heading.HeadedCells;
import growingon.load.own.heading.HeadedCells.Filled;
import growingon.load.own.heading.HeadingRead;
import growingon.load.own.heading.OwnWords;
import growingon.load.own.lot.Draft;
import growingon.load.own.lot.Site;
import growingon.load.own.sheet.SheetCell;
import growingon.load.own.sheet.SheetRow;
import growingon.load.own.size.DateSize;
import growingon.load.own.size.Inches;
import growingon.load.own.size.PotSize;
import growingon.load.own.size.SizeGrammar;
import growingon.load.own.size.SizeParts;
import growingon.load.own.size.Span;
import growingon.load.own.text.Keys;
import growingon.load.own.text.Remembered;
import growingon.load.own.text.Units;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads sizes: pot, trunk, girth, height, age and form. */
final class RowSizes {
  private static final Pattern YEARS_AND_MORE = Pattern.compile("\\d+\\s*\\+");
  private static final Pattern NUMBER_ALONE = Pattern.compile("\\d+(?:[.,]\\d+)?");

  private static final Pattern TWO_CLASSES =
      Pattern.compile("(\\d+\\s*[-–]\\s*\\d+)\\s*[/&,+]\\s*(\\d+\\s*[-–]\\s*\\d+)");

  private static final Pattern ROUGHLY =
      Pattern.compile(
          "(?i)(?:[~±≈]|(?:about|abt|approx|ca|c|circa|env|etwa|ungefähr|ong)\\b\\.?)\\s*(\\d.*)|(\\d.*?)\\s*-?ish");

  private static final Pattern CALIPER =
      Pattern.compile("(?i)(\\d+(?:[.,]\\d+)?)\\s*cal(?:iper|liper)?\\.?");

  /** The cell's own unit beats the heading's. */
  private static final Pattern IN_CM =
      Pattern.compile("(\\d+(?:[.,]\\d+)?(?:\\s*[-–/]\\s*\\d+(?:[.,]\\d+)?)?)\\s*cm\\.?");

  private static final String FORMS = "bare root|root ball|container|cutting|seedling";

  private static final Set<String> CONTAINERS =
      Set.of("containerised", "container grown", "cg", "pot grown", "potted", "containerpflanze");

  /** What names say of sizes, which is read of each name once and never changed. */
  private static final Remembered<SizeParts> NAMED = new Remembered<>();

  private final HeadedCells heads;
  private final ColumnFacts facts;
  private final Site site;
  private final OwnWords own;
  private final RowPots pots;

  RowSizes(HeadedCells heads, ColumnFacts facts, Site site, OwnWords own) {
    this.heads = heads;
    this.facts = facts;
    this.site = site;
    this.own = own;
    this.pots = new RowPots(facts, own);
  }

  /** What a row says of pot, trunk, girth, height, age and form. */
  void read(SheetRow row, Draft draft) {
    if (heads.all().stream()
            .map(head -> row.text(head.column()))
            .anyMatch(SizeGrammar::saysStandard)
        || SizeGrammar.saysStandard(draft.ownName)) {
      draft.size.standard();
    }
    heads.each(row, "pot", cell -> pots.read(cell, draft));
    heads.each(row, "trunk mm", cell -> trunk(cell, draft));
    heads.each(row, "girth cm", cell -> girth(cell, draft));
    heads.each(row, "height cm", cell -> height(cell, draft));
    heads.each(row, "height left mm", cell -> height(cell, draft));
    heads.each(row, "height x width", cell -> SizeGrammar.readSize(cell.text(), draft.size));
    heads.each(row, "size", cell -> size(cell, draft));
    bounds(row, draft);
    heads.each(row, "age", cell -> age(cell, draft));
    for (String words : List.of("quality word", "form", "habit")) {
      heads.each(row, words, cell -> formWords(cell, draft));
    }
    takeMissing(NAMED.get(draft.ownName, RowSizes::named), draft.size);
    heads.each(row, "note", cell -> noteWords(cell.text(), draft));
  }

  /** Pot and form of a title, where it has one of them. */
  static Optional<SizeParts> ofTitle(String title) {
    SizeParts parts = new SizeParts();
    SizeGrammar.readSize(title, parts);
    if (parts.pot().isEmpty() && CONTAINERS.contains(Keys.of(title))) {
      parts.form("container");
    }
    return Optional.of(parts).filter(each -> each.pot().isPresent() || each.form().isPresent());
  }

  /** What a title says of pot and form, where the row says neither. */
  void under(String title, Draft draft) {
    boolean open =
        draft.size.pot().isEmpty() && draft.size.form().isEmpty() && draft.form.isEmpty();
    if (open && !title.isEmpty()) {
      SizeParts parts = ofTitle(title).orElseThrow();
      parts.pot().ifPresent(draft.size::pot);
      parts.form().ifPresent(draft.size::form);
    }
  }

  private static SizeParts named(String name) {
    SizeParts parts = new SizeParts();
    SizeGrammar.readName(name, parts);
    return parts;
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
    if (draft.size.trunkMm().isEmpty() && draft.size.girthCm().isEmpty()) {
      SizeParts girths = new SizeParts();
      SizeGrammar.girths(text, girths);
      girths.girthCm().ifPresent(draft.size::girth);
    }
    SizeParts roots = new SizeParts();
    SizeGrammar.roots(text, roots);
    roots.form().ifPresent(draft.size::form);
  }

  private void trunk(Filled roughly, Draft draft) {
    Filled cell = exact(roughly, draft);
    Optional<Span> bare = SizeGrammar.bare(cell.text());
    String unit = facts.unit(cell.head().column());
    if (dateSize(cell, draft)) {
      return;
    }
    Matcher stated = IN_CM.matcher(cell.text());
    if (stated.matches()) {
      SizeGrammar.bare(stated.group(1)).ifPresent(cm -> draft.size.trunk(cm.times(Units.mm("cm"))));
      return;
    }
    Optional<Span> inches =
        bare.isPresent() ? Optional.empty() : Inches.of(cell.text(), unit.equals("in"));
    if (bare.isEmpty() && inches.isPresent()) {
      draft.size.trunk(inches.get().times(Units.mm("in")));
    } else if (bare.isEmpty()) {
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

  private void girth(Filled roughly, Draft draft) {
    Filled cell = exact(roughly, draft);
    Optional<Span> bare = SizeGrammar.bare(cell.text());
    String unit = Units.isLength(cell.head().unit()) ? cell.head().unit() : "cm";
    if (dateSize(cell, draft)) {
      return;
    }
    Matcher two = TWO_CLASSES.matcher(cell.text());
    if (two.matches()) {
      draft.ask(
          "girth cm",
          cell.text(),
          "",
          "which girth is it: %s or %s?".formatted(two.group(1), two.group(2)),
          List.of(two.group(1), two.group(2)));
      return;
    }
    boolean heading = unit.equals("in");
    Matcher caliper = CALIPER.matcher(cell.text());
    Optional<Span> inches = bare.isPresent() ? Optional.empty() : Inches.of(cell.text(), heading);
    if (heading && caliper.matches()) {
      SizeGrammar.bare(caliper.group(1))
          .map(span -> span.times(Units.mm(unit)))
          .ifPresent(draft.size::trunk);
    } else if (bare.isEmpty() && inches.isPresent()) {
      draft.size.girth(inches.get().times(Units.mm("in") / 10));
    } else if (bare.isEmpty()) {
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

  /** Without the mark that says that it is about, which is kept: ~8, ca. 120. */
  private static Filled exact(Filled cell, Draft draft) {
    Matcher about = ROUGHLY.matcher(cell.text());
    if (!about.matches()) {
      return cell;
    }
    draft.about(cell.text());
    draft.about = true;
    return new Filled(
        cell.head(), SheetCell.of(Objects.requireNonNullElse(about.group(1), about.group(2))));
  }

  /** 6-Aug in a size cell is the class 6-8 that a spreadsheet made a date. */
  private boolean dateSize(Filled cell, Draft draft) {
    Optional<Span> dated = DateSize.of(cell.cell());
    if (dated.isEmpty()) {
      return false;
    }
    Span span = dated.get();
    String said = "%s is read as %s".formatted(cell.text(), SizeParts.shown(span));
    if (span.isGirthClass() && !own.refuses("size", said)) {
      if (cell.head().is("trunk mm")) {
        draft.size.trunk(
            span.times(
                Units.isLength(facts.unit(cell.head().column()))
                    ? Units.mm(facts.unit(cell.head().column()))
                    : 1));
      } else if (cell.head().is("girth cm")) {
        draft.size.girth(span);
      } else {
        draft.size.open(span);
      }
      draft.nod("size", cell.text(), said);
    } else {
      draft.ask("trunk mm", cell.text(), "which size is it? a spreadsheet made it a date");
    }
    return true;
  }

  private static void measure(Filled cell, Draft draft) {
    String rest =
        SizeGrammar.pots(SizeGrammar.readMeasure(cell.text(), draft.size), draft.size).strip();
    if (rest.matches(".*\\d.*") || rest.matches(".*\\p{L}{3}.*")) {
      SizeGrammar.readRest(rest, draft.size);
    }
  }

  private void height(Filled roughly, Draft draft) {
    Filled cell = exact(roughly, draft);
    Optional<Span> bare = SizeGrammar.bare(cell.text());
    String unit = facts.unit(cell.head().column());
    if (dateSize(cell, draft)) {
      return;
    }
    Optional<Span> inches =
        bare.isPresent() ? Optional.empty() : Inches.of(cell.text(), unit.equals("in"));
    if (bare.isEmpty() && inches.isPresent()) {
      draft.size.height(inches.get().times(Units.mm("in") / 10));
    } else if (bare.isEmpty()) {
      measure(cell, draft);
    } else if (unit.equals(Units.ASK)) {
      draft.ask(
          "height left mm", cell.text(), "in which unit is the height %s?".formatted(cell.text()));
    } else {
      boolean metres =
          unit.equals("cm")
              && bare.get().to() < 10
              && (bare.get().pointed() || facts.mixesMetres(cell.head().column()));
      draft.size.height(bare.get().times(metres ? 100 : Units.mm(unit) / 10));
    }
  }

  private void size(Filled cell, Draft draft) {
    if (dateSize(cell, draft)) {
      return;
    }
    String text = cell.text();
    Optional<Span> bare = SizeGrammar.bare(text);
    facts.trunkWordMm(cell.head().column()).ifPresent(draft.size::trunksIn);
    String unit = cell.head().unit();
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
    for (HeadingRead head : heads.all()) {
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

  private static void age(Filled cell, Draft draft) {
    String text = cell.text();
    boolean alone = NUMBER_ALONE.matcher(text).matches();
    if (alone) {
      int years = (int) Math.rint(Double.parseDouble(text.replace(',', '.')));
      if (years < 100) {
        draft.size.age(years);
      }
    }
    if (alone || YEARS_AND_MORE.matcher(text).matches()) {
      draft.note(cell.head().heading() + " " + text);
    } else {
      SizeGrammar.readSize(text, draft.size);
    }
  }

  private static void formWords(Filled cell, Draft draft) {
    String key = Keys.of(cell.text());
    for (String form : FORMS.split("\\|")) {
      if (key.equals(form) || key.equals(form + "s")) {
        draft.form = form;
        return;
      }
    }
    if (CONTAINERS.contains(key)) {
      draft.form = "container";
      return;
    }
    draft.note(SizeGrammar.readWords(cell.text(), draft.size));
  }

  /** Trunk and height of all that was read, once the whole row is. */
  void settle(Draft draft) {
    SizeParts size = draft.size;
    size.settle();
    size.asks()
        .forEach(
            ask ->
                draft.ask(
                    ask.substring(0, Math.max(0, ask.indexOf(':'))),
                    draft.sizeText,
                    ask.substring(ask.indexOf(':') + 1).strip()));
    size.nods().forEach(nod -> nod(nod, draft));
    size.notes().forEach(draft::note);
    Optional<Span> trunk = size.trunkMm();
    if (trunk.isPresent() && size.girthCm().isPresent()) {
      draft.note("girth " + SizeParts.shown(size.girthCm().get()) + " cm");
    }
    Optional<Span> mm = trunk.or(() -> size.girthCm().map(cm -> site.trunkMm(cm)));
    mm.filter(span -> span.from() > 0 && span.to() <= 2000)
        .ifPresent(
            span -> {
              draft.trunkFrom = OptionalDouble.of(span.from());
              draft.trunkTo = OptionalDouble.of(span.to());
            });
    size.heightCm().ifPresent(cm -> draft.height = OptionalDouble.of(cm.middle()));
  }

  /** What is likely is taken till the grower says no. */
  private void nod(SizeParts.Nod nod, Draft draft) {
    if (!own.refuses("size", nod.said())) {
      draft.nod("size", "", nod.said());
      return;
    }
    draft.size.without(nod);
    if (nod.ofPot()) {
      draft.ask("pot", draft.sizeText, "which pot is it?");
    }
  }
}
