package growingon.load.own;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What the grower is asked after the first plan: at most thirty cells, the rest below them. */
public final class ToFill {
  /** Open and likely readings. */
  public static final String READING = "reading";

  private static final String MONEY = "money and growth";
  private static final String ROOM = "room and hours";
  private static final String MORE = "more";
  private static final int MOST_READING = 8;
  private static final int MOST_MONEY = 12;
  private static final int MOST_ROOM = 10;

  private ToFill() {}

  /**
   * The rows in order.
   *
   * @param lists of stock and of offers
   */
  public static List<Fill> of(List<ListRead> lists, UsualNursery usual, String currency) {
    List<Fill> asked = new ArrayList<>();
    List<Fill> more = new ArrayList<>();
    take(reading(lists), READING, MOST_READING, asked, more);
    take(money(lists, usual, currency), MONEY, MOST_MONEY, asked, more);
    take(room(usual, currency), ROOM, MOST_ROOM, asked, more);
    asked.addAll(more);
    return List.copyOf(asked);
  }

  private static void take(
      List<Fill> all, String block, int most, List<Fill> asked, List<Fill> more) {
    for (int i = 0; i < all.size(); i++) {
      if (i < most) {
        asked.add(all.get(i).in(block));
      } else {
        more.add(all.get(i).in(MORE));
      }
    }
  }

  /** Questions by the plants that they concern; nods of one kind are one. */
  private static List<Fill> reading(List<ListRead> lists) {
    Map<Question, ListKind> questions = new LinkedHashMap<>();
    for (ListRead list : lists) {
      list.questions().forEach(each -> questions.put(each, list.kind()));
    }
    Set<String> leftOut = new HashSet<>();
    for (ListRead list : lists) {
      list.asked().forEach(lot -> leftOut.add(lot.lot()));
    }
    List<Fill> fills = new ArrayList<>(headings(lists));
    questions.keySet().stream()
        .filter(each -> !each.nod())
        .sorted(
            Comparator.comparing((Question each) -> !leftOut.contains(each.lot()))
                .thenComparing(Comparator.comparing(Question::plants).reversed()))
        .forEach(each -> fills.add(fill(each, questions.get(each))));
    nods(questions.keySet()).forEach(fills::add);
    return fills;
  }

  /** Which price has money of other lists in the nursery's. */
  public static Fill rate(String code, String currency) {
    return new Fill(
        "",
        "Offers are in %s: what is 1 %s in %s? till then they are left out"
            .formatted(code, code, currency),
        currency,
        "all offers in " + code,
        "settings",
        "exchange rate " + code,
        "value",
        READING,
        false);
  }

  /** One question for each heading that is open or likely. */
  private static List<Fill> headings(List<ListRead> lists) {
    Map<String, Fill> fills = new LinkedHashMap<>();
    for (ListRead list : lists) {
      for (HeadingRead head : list.headings()) {
        if (head.unit().equals(Units.GROSS) && head.rows() > 0 && head.is("selling price")) {
          fills.putIfAbsent("vat " + Keys.of(head.heading()), vat(head));
        }
        boolean open = head.is(Meaning.OPEN) && head.rows() > 0;
        if (open || head.how() == HeadingRead.How.LIKELY) {
          String choices =
              head.choices().isEmpty() ? "" : " " + String.join(" or ", head.choices()) + "?";
          fills.putIfAbsent(
              list.kind().heading() + " " + Keys.of(head.heading()),
              new Fill(
                      open ? "not read" : "yes",
                      "What is the column %s (as in %s)?%s"
                          .formatted(
                              head.heading(),
                              head.example(),
                              open ? choices : " it is read as " + head.ours()),
                      "",
                      head.rows() + " rows",
                      "own words",
                      head.heading(),
                      list.kind().heading(),
                      READING,
                      false)
                  .choosing(head.choosable()));
        }
      }
    }
    return List.copyOf(fills.values());
  }

  private static Fill vat(HeadingRead head) {
    return new Fill(
        "not read",
        "%s is with VAT: at which rate?".formatted(head.heading()),
        "%",
        head.rows() + " rows",
        "own words",
        head.heading(),
        "vat",
        READING,
        false);
  }

  private static Fill fill(Question question, ListKind kind) {
    String where =
        question.row() > 0
            ? "%s, row %d".formatted(question.sheet(), question.row())
            : question.sheet();
    String found = question.found().isEmpty() ? "" : ", \"" + question.found() + "\"";
    return new Fill(
            question.usual(),
            "%s, %s%s: %s".formatted(where, question.column(), found, question.question()),
            "",
            question.plants() > 0 ? question.plants() + " plants" : "",
            question.column().equals("species")
                ? "own words"
                : question.row() == 0 ? "own words" : kind.table(),
            question.column().equals("species")
                ? question.found()
                : question.row() == 0 ? question.found() : question.lot(),
            question.column(),
            READING,
            false)
        .choosing(question.choices());
  }

  private static List<Fill> nods(Set<Question> questions) {
    Map<String, List<Question>> byKind = new LinkedHashMap<>();
    questions.stream()
        .filter(Question::nod)
        .forEach(
            each ->
                byKind
                    .computeIfAbsent(
                        each.sheet() + each.column() + each.question().replaceAll("[0-9.,]+", "#"),
                        key -> new ArrayList<>())
                    .add(each));
    return byKind.values().stream().map(ToFill::nod).toList();
  }

  private static Fill nod(List<Question> alike) {
    Question first = alike.get(0);
    String rows =
        String.join(
            ", ",
            alike.stream().map(each -> Integer.toString(each.row())).distinct().limit(12).toList());
    long plants = alike.stream().mapToLong(Question::plants).sum();
    return new Fill(
        "yes",
        "%s, %s: %s (row%s %s)%s; is that right?"
            .formatted(
                first.sheet(),
                first.column(),
                first.question(),
                alike.size() == 1 ? "" : "s",
                rows,
                alike.size() == 1 ? "" : " and the like"),
        "",
        plants + " plants",
        "own words",
        first.found(),
        first.column(),
        READING,
        false);
  }

  private static List<Fill> money(List<ListRead> lists, UsualNursery usual, String currency) {
    List<Fill> fills = new ArrayList<>();
    currency(lists).ifPresent(fills::add);
    Map<String, List<Map<String, String>>> tables = usual.tables();
    for (Map<String, String> row : tables.get("demand")) {
      if (row.get("species").equals("*")) {
        String name = "%s, %s".formatted(row.get("ladder"), row.get("grade"));
        fills.add(
            new Fill(
                row.get("price"),
                "What does a %s tree sell for? (%s)".formatted(row.get("grade"), row.get("ladder")),
                currency + " without VAT",
                "all sales of that grade",
                "demand",
                name,
                "price",
                MONEY,
                false));
      }
    }
    classes(usual, fills);
    fills.add(
        new Fill(
            "1",
            "Do your trees grow faster or slower than usual? 1.2 is a fifth faster",
            "times",
            "when all trees are ready",
            "settings",
            "site speed",
            "value",
            MONEY,
            false));
    for (Map<String, String> row : tables.get("species")) {
      if (row.get("library").equals("deciduous") || row.get("library").equals("evergreen")) {
        fills.add(
            new Fill(
                row.get("library"),
                "%s is not in the library: which plant there is it most like?"
                    .formatted(row.get("species")),
                "",
                "its growth and losses",
                "species",
                row.get("species"),
                "library",
                MONEY,
                false));
      }
    }
    fills.add(
        new Fill(
            "15",
            "What does an hour of work cost?",
            currency,
            "all work",
            "settings",
            "hourly rate",
            "value",
            MONEY,
            false));
    for (Map<String, String> row : tables.get("demand")) {
      if (row.get("species").equals("*")) {
        fills.add(
            new Fill(
                row.get("units"),
                "How many %s trees do you sell in a season? (%s)"
                    .formatted(row.get("grade"), row.get("ladder")),
                "plants",
                "all sales of that grade",
                "demand",
                "%s, %s".formatted(row.get("ladder"), row.get("grade")),
                "units",
                MONEY,
                false));
      }
    }
    return fills;
  }

  /** Where the prices do not say it, the currency is asked for. */
  private static Optional<Fill> currency(List<ListRead> lists) {
    Set<String> signs = new HashSet<>();
    boolean stock = lists.stream().anyMatch(list -> !list.kind().isOffers());
    lists.stream()
        .filter(list -> !stock || !list.kind().isOffers())
        .forEach(list -> signs.addAll(list.currencies()));
    return signs.size() == 1
        ? Optional.empty()
        : Optional.of(
            new Fill(
                    "EUR",
                    "Which is the currency of your prices? as GBP, EUR or USD",
                    "",
                    "all money",
                    "settings",
                    "currency",
                    "value",
                    MONEY,
                    false)
                .choosing(List.of("GBP", "EUR", "USD", "CHF")));
  }

  /** The classes of usual trunks with most plants. */
  private static void classes(UsualNursery usual, List<Fill> fills) {
    Map<String, Long> plants = new LinkedHashMap<>();
    Map<String, Double> trunk = new LinkedHashMap<>();
    for (OwnLot lot : usual.lots().isEmpty() ? usual.offers() : usual.lots()) {
      if (lot.trunkFromMm().isEmpty()) {
        String name = UsualTrunk.classOf(lot);
        plants.merge(name, (long) lot.quantity().orElse(0), Long::sum);
        trunk.putIfAbsent(name, UsualTrunk.mm(lot));
      }
    }
    plants.entrySet().stream()
        .sorted(Map.Entry.<String, Long>comparingByValue().reversed())
        .limit(3)
        .forEach(
            each ->
                fills.add(
                    new Fill(
                        PotSize.plain(trunk.get(each.getKey())),
                        "How thick is the trunk of trees in %s?".formatted(each.getKey()),
                        "mm",
                        each.getValue() + " plants",
                        "stock",
                        each.getKey(),
                        "trunk mm",
                        MONEY,
                        false)));
  }

  private static List<Fill> room(UsualNursery usual, String currency) {
    List<Fill> fills = new ArrayList<>();
    for (Map<String, String> place : usual.tables().get("places")) {
      long plants =
          usual.lots().stream()
              .filter(lot -> lot.place().equals(place.get("place")))
              .mapToLong(lot -> lot.quantity().orElse(0))
              .sum();
      fills.add(
          new Fill(
              place.get("square metres"),
              "How large is %s, a %s?".formatted(place.get("place"), place.get("kind")),
              "m²",
              plants + " plants",
              "places",
              place.get("place"),
              "square metres",
              ROOM,
              false));
    }
    fills.sort(
        Comparator.comparing((Fill each) -> Long.parseLong(each.moves().replace(" plants", "")))
            .reversed());
    List<Fill> first = new ArrayList<>(fills.subList(0, Math.min(7, fills.size())));
    first.add(
        new Fill(
            "40",
            "How many hours of work are there in a week?",
            "hours",
            "what can be done",
            "settings",
            "hours a week",
            "value",
            ROOM,
            false));
    first.add(
        new Fill(
            "0",
            "How much cash is there now?",
            currency,
            "the lowest cash",
            "settings",
            "opening cash",
            "value",
            ROOM,
            false));
    inGround(usual, first);
    first.addAll(fills.subList(Math.min(7, fills.size()), fills.size()));
    return first;
  }

  private static void inGround(UsualNursery usual, List<Fill> fills) {
    long plants =
        usual.lots().stream()
            .filter(lot -> lot.potLitres().isEmpty())
            .mapToLong(lot -> lot.quantity().orElse(0))
            .sum();
    if (plants > 0) {
      fills.add(
          new Fill(
                  "by size",
                  "Are the trees in the ground to be lifted and potted? type the route: lift and pot, as it stands, in the bed",
                  "",
                  plants + " plants",
                  "stock",
                  "no pot",
                  "route",
                  ROOM,
                  false)
              .choosing(List.of("lift and pot", "as it stands", "in the bed")));
    }
  }
}
