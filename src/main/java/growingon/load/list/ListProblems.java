package growingon.load.list;

import growingon.load.cell.Findings;
import growingon.load.file.AnswersGiven;
import growingon.load.own.heading.HeadingRead;
import growingon.load.own.heading.WhoseList;
import growingon.load.own.lot.OwnLot;
import growingon.load.own.row.ListRead;
import growingon.load.own.row.SheetAccount;
import growingon.load.own.row.StatedTotal;
import growingon.load.source.Answer;
import growingon.problem.Where;
import growingon.problem.advice.ListAdvice;
import java.util.List;

/** What is to be said of a list that was read, and what stops a plan. */
final class ListProblems {
  private ListProblems() {}

  /**
   * Says it.
   *
   * @param open rows that are left out, as nobody has said their number yet
   */
  static void tell(ListRead read, List<OwnLot> open, List<Answer> answers, Findings findings) {
    Where where = Where.file(read.file());
    if (read.accounts().stream().noneMatch(each -> each.read().equals("yes"))) {
      findings.add(
          read.accounts().stream()
              .filter(each -> each.read().contains(WhoseList.BY_OFFERS))
              .findFirst()
              .map(each -> ListAdvice.aSuppliers(where, each.sheet()))
              .orElseGet(
                  () ->
                      ListAdvice.noList(
                          where, read.accounts().stream().map(SheetAccount::sheet).toList())));
      return;
    }
    checkRows(read, open, where, findings);
    for (HeadingRead head : read.headings()) {
      Where cell = new Where(read.file(), sheet(read, head.sheet()), head.row(), head.heading());
      if (head.ours().equals("?")) {
        findings.add(ListAdvice.openHeading(cell, head.example(), head.choices()));
      } else if (answers.stream().noneMatch(answer -> isTo(answer, head, read))) {
        checkTaken(head, cell, findings);
      }
    }
    read.totals().stream()
        .filter(total -> !total.agrees())
        .forEach(total -> findings.add(total(read, total)));
    read.unusedTitles()
        .forEach(
            title ->
                findings.add(
                    ListAdvice.titleNotUsed(
                        new Where(read.file(), sheet(read, title.sheet()), title.row(), ""),
                        title.text())));
    read.notices().forEach(notice -> findings.add(ListAdvice.said(where, notice)));
  }

  /** What is not certain, and nobody has said yes to. */
  private static void checkTaken(HeadingRead head, Where cell, Findings findings) {
    if (head.isInDoubt()) {
      findings.add(ListAdvice.headingInDoubt(cell, head.ours(), head.others()));
    } else if (head.isPlantARow()) {
      findings.add(ListAdvice.plantARow(Where.file(cell.file())));
    } else if (head.how() == HeadingRead.How.BY_ITS_CELLS) {
      findings.add(ListAdvice.headingByCells(cell, head.ours()));
    } else if (head.how() == HeadingRead.How.LIKELY) {
      findings.add(
          head.why().isEmpty()
              ? ListAdvice.headingByWords(cell, head.ours())
              : ListAdvice.headingByCells(cell, head.ours()));
    }
  }

  private static boolean isTo(Answer answer, HeadingRead head, ListRead read) {
    return answer.isTo(AnswersGiven.OWN_WORDS.name(), head.heading(), read.kind().heading());
  }

  /** A file without sheets is named once. */
  private static String sheet(ListRead read, String sheet) {
    return sheet.equals(read.file()) ? "" : sheet;
  }

  private static growingon.problem.Problem total(ListRead read, StatedTotal total) {
    Where where = new Where(read.file(), sheet(read, total.sheet()), total.row(), "");
    return ListAdvice.wrongTotal(where, total.stated(), total.read(), total.why());
  }

  /** A plan of a list of which a tenth cannot be read would be another nursery's. */
  private static void checkRows(ListRead read, List<OwnLot> open, Where where, Findings findings) {
    boolean offers = read.kind().isOffers();
    int all = read.lots().size() + read.asked().size();
    if (offers && !read.hasPrices()) {
      findings.add(ListAdvice.noPrice(where));
    } else if (read.lacksNumber()) {
      findings.add(ListAdvice.noNumber(where, read.maybeNumbers()));
    } else if (offers && open.size() == all && read.asksOfColumns() && all > 0) {
      findings.add(ListAdvice.someAsked(where, open.size(), read.leftOut(open)));
    } else if (all == 0) {
      findings.add(ListAdvice.noLots(where));
    } else if (read.isMisread(open)) {
      findings.add(ListAdvice.manyAsked(where, open.size(), all, read.leftOut(open)));
    } else if (!open.isEmpty()) {
      findings.add(ListAdvice.someAsked(where, open.size(), read.leftOut(open)));
    }
  }
}
