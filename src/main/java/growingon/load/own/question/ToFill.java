package growingon.load.own.question;

import growingon.load.own.row.ListRead;
import growingon.load.own.usual.UsualNursery;
import growingon.nursery.number.Writing;
import java.util.ArrayList;
import java.util.List;

/** What the grower is asked after the first plan: at most thirty cells, the rest below them. */
public final class ToFill {
  /** Open and likely readings. */
  public static final String READING = "reading";

  static final String MONEY = "money and growth";
  static final String ROOM = "room and hours";
  private static final String MORE = "more";
  private static final int MOST_READING = 8;
  private static final int MOST_MONEY = 12;
  private static final int MOST_ROOM = 10;

  private ToFill() {}

  /**
   * The rows in order.
   *
   * @param lists of stock and of offers
   * @param moved what each moves, as far as that is known
   * @param writing of the numbers in it
   */
  public static List<Fill> of(
      List<ListRead> lists, UsualNursery usual, String currency, Moved moved, Writing writing) {
    List<Fill> asked = new ArrayList<>();
    List<Fill> more = new ArrayList<>();
    take(ReadingFills.of(lists), READING, MOST_READING, asked, more);
    take(moved.told(new MoneyFills(lists, usual, currency).all()), MONEY, MOST_MONEY, asked, more);
    take(RoomFills.of(usual, currency), ROOM, MOST_ROOM, asked, more);
    asked.addAll(more);
    return asked.stream().map(fill -> fill.written(writing)).toList();
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
}
