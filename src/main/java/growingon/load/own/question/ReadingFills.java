package growingon.load.own.question;

import growingon.load.own.heading.Columns;
import growingon.load.own.heading.HeadingRead;
import growingon.load.own.heading.ListKind;
import growingon.load.own.heading.OwnWords;
import growingon.load.own.heading.VatRates;
import growingon.load.own.lot.Question;
import growingon.load.own.row.ListRead;
import growingon.load.own.row.RowPrices;
import growingon.load.own.row.SheetAccount;
import growingon.load.own.text.Keys;
import growingon.load.own.text.Meaning;
import growingon.load.own.text.Units;
import growingon.nursery.number.Writing;
import growingon.nursery.record.InList;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What is asked of the reading of lists: open and likely headings, cells and names. */
final class ReadingFills {
  private static final String READING = ToFill.READING;
  private static final List<String> YES_OR_NO = List.of("yes", "no");

  private ReadingFills() {}

  /**
   * A question.
   *
   * @param kind of the rows of its list
   * @param heading what stands above the cell in the list, else the column of ours
   * @param inList the cell, if it is of one row
   * @param said what the list itself explains of it
   */
  private record Asked(
      Question question, ListKind kind, String heading, Optional<InList> inList, String said) {
    static Asked of(Question question, ListRead list) {
      Optional<HeadingRead> head =
          list.headings().stream()
              .filter(each -> each.sheet().equals(question.sheet()) && each.is(question.column()))
              .filter(each -> each.column() < Columns.PLANT_A_ROW_COLUMN)
              .findFirst();
      return new Asked(
          question,
          list.kind(),
          head.map(HeadingRead::heading).orElse(question.column()),
          question.row() == 0
              ? Optional.empty()
              : Optional.of(
                  list.cell(
                      question.sheet(), question.row(), head.map(HeadingRead::column).orElse(0))),
          list.legend()
              .about(
                  head.map(HeadingRead::heading).orElse(question.column()),
                  List.of(question.found())));
    }

    /** The same of the plants of both. */
    Asked and(Asked other) {
      long plants = question.plants() + other.question.plants();
      return equals(other)
          ? this
          : new Asked(question.ofLot(question.lot(), plants), kind, heading, inList, said);
    }

    Fill linked(Fill fill) {
      return inList.map(fill::of).orElse(fill);
    }
  }

  /** Questions by the plants that they concern; nods of one kind are one. */
  static List<Fill> of(List<ListRead> lists) {
    List<Asked> asked = new ArrayList<>();
    for (ListRead list : lists) {
      list.questions().forEach(each -> asked.add(Asked.of(each, list)));
    }
    Set<String> leftOut = new HashSet<>();
    for (ListRead list : lists) {
      list.asked().forEach(lot -> leftOut.add(lot.lot()));
    }
    String only = onlySheet(lists);
    List<Fill> fills = new ArrayList<>();
    asked.stream()
        .filter(each -> each.question.column().equals(Question.WHOSE_LIST))
        .forEach(each -> fills.add(each.linked(fill(each, only))));
    asked.removeIf(each -> each.question.column().equals(Question.WHOSE_LIST));
    fills.addAll(headings(lists));
    askedOnce(asked).stream()
        .sorted(
            Comparator.comparing((Asked each) -> !leftOut.contains(each.question.lot()))
                .thenComparing(
                    Comparator.comparing((Asked each) -> each.question.plants()).reversed()))
        .forEach(each -> fills.add(each.linked(fill(each, only))));
    lists.forEach(list -> secondPrice(list).ifPresent(fills::add));
    nods(asked.stream().distinct().toList(), only).forEach(fills::add);
    return fills;
  }

  /** The sheet, where there is one only, so that it need not be named. */
  private static String onlySheet(List<ListRead> lists) {
    List<String> sheets =
        lists.stream()
            .flatMap(list -> list.accounts().stream())
            .filter(account -> account.read().equals("yes"))
            .map(SheetAccount::sheet)
            .toList();
    return sheets.size() == 1 ? sheets.get(0) : "";
  }

  /** A plant's name is asked once, whichever rows bear it. */
  private static Collection<Asked> askedOnce(List<Asked> all) {
    Map<Object, Asked> once = new LinkedHashMap<>();
    for (Asked each : all) {
      Question question = each.question;
      if (!question.nod()) {
        boolean isName = question.column().equals("species");
        once.merge(isName ? question.found() : each, each, Asked::and);
      }
    }
    return once.values();
  }

  /** One question for each heading that is open or likely. */
  private static List<Fill> headings(List<ListRead> lists) {
    Map<String, Fill> fills = new LinkedHashMap<>();
    for (ListRead list : lists) {
      for (HeadingRead head : list.headings()) {
        if (head.lacksVatRate() && head.rows() > 0 && head.is("selling price")) {
          fills.putIfAbsent("vat " + Keys.of(head.heading()), vat(head).of(cell(head, list)));
        }
        boolean open = head.is(Meaning.OPEN) && head.rows() > 0;
        if (head.isPlantARow()) {
          fills.putIfAbsent(Columns.PLANT_A_ROW, plantARow(head, list));
        } else if (open || head.how() == HeadingRead.How.LIKELY) {
          fills.putIfAbsent(
              list.kind().heading() + " " + Keys.of(head.heading()), heading(head, open, list));
        }
      }
    }
    return fills.values().stream()
        .sorted(
            Comparator.comparing(
                fill -> fill.choices().isEmpty() && fill.column().equals("heading")))
        .toList();
  }

  private static Fill heading(HeadingRead head, boolean open, ListRead list) {
    String choices =
        head.choices().isEmpty() ? "" : " " + String.join(" or ", head.choices()) + "?";
    String others =
        head.isInDoubt() ? "; or is it %s?".formatted(String.join(" or ", head.others())) : "";
    String question =
        "What is the column %s (as in %s)?%s%s"
            .formatted(
                head.heading(),
                head.example(),
                open ? choices : " it is read as " + head.ours() + others,
                list.legend().about(head.heading(), List.of(head.example())));
    return ofHeading(open ? "not read" : "yes", question, "", head, list.kind().heading())
        .choosing(choosable(head))
        .of(cell(head, list));
  }

  /** A question about a column, answered in own words under its heading. */
  private static Fill ofHeading(
      String usual, String question, String unit, HeadingRead head, String kind) {
    return new Fill(
        usual,
        question,
        unit,
        head.rows() + " rows",
        "own words",
        head.heading(),
        kind,
        READING,
        false);
  }

  /** A nod, or what else a heading may be that is in doubt. */
  private static List<String> choosable(HeadingRead head) {
    if (!head.isInDoubt()) {
      return head.choosable();
    }
    List<String> all = new ArrayList<>(List.of("yes"));
    all.addAll(head.others());
    all.add(Meaning.NOT_READ);
    return all;
  }

  private static InList cell(HeadingRead head, ListRead list) {
    return list.cell(head.sheet(), head.row(), head.column());
  }

  private static Fill plantARow(HeadingRead head, ListRead list) {
    String question =
        "No column says how many there are: is every row one plant, as %s?"
            .formatted(head.example());
    return ofHeading("yes", question, "", head, list.kind().heading())
        .choosing(List.of("yes", Meaning.NOT_READ));
  }

  /** Of several prices of a sheet one is planned with; which it is to be is asked once. */
  private static Optional<Fill> secondPrice(ListRead list) {
    Map<String, List<HeadingRead>> bySheet = new LinkedHashMap<>();
    list.headings().stream()
        .filter(head -> head.is("selling price") && head.rows() > 0)
        .filter(head -> !head.unit().equals(Units.GROSS) && head.how() != HeadingRead.How.YOURS)
        .forEach(
            head -> bySheet.computeIfAbsent(head.sheet(), each -> new ArrayList<>()).add(head));
    return bySheet.values().stream()
        .filter(heads -> heads.size() > 1)
        .findFirst()
        .map(
            heads -> {
              HeadingRead taken = RowPrices.latestFirst(heads).get(0);
              List<String> others =
                  heads.stream().filter(each -> each != taken).map(HeadingRead::heading).toList();
              String question =
                  "Is %s what you get, or %s? type note if it is the other"
                      .formatted(taken.heading(), Writing.list(others));
              return ofHeading("selling price", question, "", taken, list.kind().heading())
                  .choosing(List.of("selling price", "note"))
                  .of(cell(taken, list));
            });
  }

  private static Fill vat(HeadingRead head) {
    String question =
        VatRates.suppose(head)
            ? "Is %s with VAT? type the rate, or 0 if it is without"
            : "%s is with VAT: at which rate?";
    return ofHeading("not read", question.formatted(head.heading()), "%", head, "vat");
  }

  /**
   * A question.
   *
   * @param only the sheet, where there is one only
   */
  private static Fill fill(Asked asked, String only) {
    Question question = asked.question;
    String sheet = question.sheet().equals(only) ? "" : question.sheet() + ", ";
    String where =
        question.row() > 0 ? "%srow %d".formatted(sheet, question.row()) : question.sheet();
    String found = question.found().isEmpty() ? "" : ", \"" + question.found() + "\"";
    return new Fill(
            question.usual(),
            "%s, %s%s: %s%s"
                .formatted(where, asked.heading, found, question.question(), asked.said),
            "",
            question.plants() > 0 ? Fill.plants(question.plants()) : "",
            question.column().equals("species")
                ? "own words"
                : question.row() == 0 ? "own words" : asked.kind.table(),
            question.column().equals("species")
                ? question.found()
                : question.row() == 0 ? question.found() : question.lot(),
            question.column(),
            READING,
            false)
        .choosing(question.choices());
  }

  private static List<Fill> nods(List<Asked> all, String only) {
    Map<String, List<Asked>> byKind = new LinkedHashMap<>();
    for (Asked each : all) {
      Question question = each.question;
      if (question.nod()) {
        String kind = question.sheet() + question.column() + OwnWords.alike(question.question());
        byKind.computeIfAbsent(kind, key -> new ArrayList<>()).add(each);
      }
    }
    return byKind.values().stream()
        .map(alike -> alike.get(0).linked(nod(alike.stream().map(Asked::question).toList(), only)))
        .toList();
  }

  private static Fill nod(List<Question> alike, String only) {
    Question first = alike.get(0);
    String rows =
        String.join(
            ", ",
            alike.stream().map(each -> Integer.toString(each.row())).distinct().limit(12).toList());
    long plants = alike.stream().mapToLong(Question::plants).sum();
    return new Fill(
            "yes",
            "%s%s: %s (row%s %s)%s; is that right? %s"
                .formatted(
                    first.sheet().equals(only) ? "" : first.sheet() + ", ",
                    first.column(),
                    first.question(),
                    alike.size() == 1 ? "" : "s",
                    rows,
                    alike.size() == 1 ? "" : " and the like",
                    first.column().equals("quantity")
                        ? "with no, these rows are left out till you type their numbers"
                        : "with no, it is not read"),
            "",
            Fill.plants(plants),
            "own words",
            OwnWords.alike(first.question()),
            first.column(),
            READING,
            false)
        .choosing(YES_OR_NO);
  }
}
