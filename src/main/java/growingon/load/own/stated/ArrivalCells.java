package growingon.load.own.stated;

import growingon.load.own.heading.ColumnFacts;
import growingon.load.own.heading.HeadedCells;
import growingon.load.own.heading.HeadedCells.Filled;
import growingon.load.own.heading.OwnWords;
import growingon.load.own.lot.Draft;
import growingon.load.own.lot.Site;
import growingon.load.own.sheet.SheetCell;
import growingon.load.own.sheet.SheetRow;
import growingon.load.own.text.BoughtText;
import growingon.load.own.text.CountText;
import growingon.load.own.text.OfferMonth;
import growingon.load.own.text.Read;
import growingon.load.own.text.Titles;
import growingon.load.own.text.Units;
import java.time.YearMonth;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads when the plants of a row came or, of an offer, can come. */
public final class ArrivalCells {
  private static final Pattern POTTED =
      Pattern.compile(
          "(?iu)(?:re-?)?(?:pot|topf|getopft|umgetopft|rempot|empot|opgepot|verpot|invasat|enmacet)");

  private final HeadedCells heads;
  private final MonthCells months;
  private final Site site;
  private final OwnWords own;

  /** Of a list. */
  public ArrivalCells(HeadedCells heads, ColumnFacts facts, Site site, OwnWords own) {
    this.heads = heads;
    this.months = new MonthCells(facts, site.south());
    this.site = site;
    this.own = own;
  }

  /** Whether a row states a month of arrival. */
  public boolean hasCome(SheetRow row) {
    boolean[] came = {false};
    heads.each(row, "arrived", cell -> came[0] |= month(cell).value().isPresent());
    return came[0];
  }

  /** Whether a row states that its plants came after a month. */
  public boolean comesAfter(SheetRow row, YearMonth month) {
    boolean[] later = {false};
    heads.each(
        row,
        "arrived",
        cell -> {
          Read<YearMonth> read = month(cell);
          later[0] |= !read.about() && read.value().filter(each -> each.isAfter(month)).isPresent();
        });
    return later[0];
  }

  /** When the plants of a row came, and when they were potted. */
  public void read(SheetRow row, Draft draft) {
    heads.each(
        row,
        "arrived",
        cell -> {
          Read<YearMonth> read = inWords(cell, month(cell), draft);
          if (read.isAsked() || own.refuses("arrived", read.nod())) {
            draft.ask("arrived", cell.text(), read.isAsked() ? read.ask() : "which month is it?");
          } else if (draft.arrived.isEmpty()) {
            draft.arrived = read.value();
            draft.arrivedAbout = read.about();
            if (read.about()) {
              draft.about(cell.text());
            }
            if (!read.nod().isEmpty()) {
              draft.nod("arrived", cell.text(), read.nod());
            }
          }
        });
    opened(row, draft);
    heads.each(
        row,
        "potted",
        cell -> month(cell).value().ifPresent(month -> draft.potted = Optional.of(month)));
  }

  /** A month behind words: planted spring 23; of one behind potted it is when they were potted. */
  private Read<YearMonth> inWords(Filled cell, Read<YearMonth> read, Draft draft) {
    Optional<YearMonth> month =
        read.isAsked() && !own.list().isOffers()
            ? BoughtText.within(cell.text(), months.of(cell))
            : Optional.empty();
    if (month.isEmpty()) {
      return read;
    }
    if (POTTED.matcher(cell.text()).lookingAt()) {
      draft.potted = draft.potted.or(() -> month);
      draft.nod("potted", cell.text(), month.get() + " is when they were potted");
      return Read.none();
    }
    return Read.likely(month.get(), month.get() + " is when they came");
  }

  /** A month and a price in a remark count, with a nod, where no column says them. */
  public void readRemarks(SheetRow row, Draft draft) {
    heads.each(row, "note", cell -> bought(cell.text(), draft));
  }

  private void bought(String remark, Draft draft) {
    BoughtText said = BoughtText.of(remark);
    if (!heads.has("arrived") && draft.arrived.isEmpty() && said.month().isPresent()) {
      draft.arrived = said.month();
      draft.nod("arrived", remark, "%s is when they came".formatted(said.month().get()));
    }
    boolean priced = heads.has("unit cost") || heads.has("row cost");
    if (!priced && draft.unitCost.isEmpty() && said.cost().isPresent()) {
      draft.unitCost = said.cost();
      draft.nod("unit cost", remark, "%s is what one cost".formatted(said.cost().getAsDouble()));
    }
  }

  /** Of which none were there when the books were opened cannot have come before. */
  private void opened(SheetRow row, Draft draft) {
    heads.each(
        row,
        "opening",
        cell -> {
          Optional<YearMonth> opened = Titles.month(SheetCell.of(cell.head().heading()));
          boolean before =
              CountText.isGone(cell.cell())
                  && draft.quantity.orElse(0) > 0
                  && opened.isPresent()
                  && draft.arrived.filter(month -> month.isBefore(opened.get())).isPresent();
          if (before) {
            draft.ask(
                "arrived",
                heads.first(row, "arrived"),
                "none were there by %s; which month and year?".formatted(cell.head().heading()));
            draft.arrived = Optional.empty();
          }
        });
  }

  /** A number alone below a heading that says week is a week. */
  private static SheetCell ofWeek(Filled cell) {
    boolean week = cell.head().unit().equals(Units.WEEK) && cell.text().matches("[1-5]?[0-9]");
    return week ? SheetCell.of("wk " + cell.text()) : cell.cell();
  }

  private Read<YearMonth> month(Filled cell) {
    return site.buysFrom()
        .filter(from -> own.list().isOffers())
        .map(from -> new OfferMonth(months.of(cell), from).of(ofWeek(cell)))
        .orElseGet(() -> months.read(cell));
  }
}
