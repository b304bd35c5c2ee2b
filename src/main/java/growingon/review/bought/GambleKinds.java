package growingon.review.bought;

import growingon.review.bought.BoughtReview.Verdict;
import growingon.review.bought.GambleKind.By;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

/** Puts bought lots together by what they have in common. */
public final class GambleKinds {
  private GambleKinds() {}

  /** Bought lots by supplier, by species, and by whether they were seen. */
  public static List<GambleKind> of(List<BoughtReview> bought) {
    List<GambleKind> kinds = new ArrayList<>();
    add(By.SUPPLIER, bought, each -> each.lot().papers().supplier(), kinds);
    add(By.SPECIES, bought, each -> each.lot().species(), kinds);
    add(By.SEEN, bought, each -> each.isSeen() ? "seen" : "unseen", kinds);
    return kinds;
  }

  private static void add(
      By by,
      List<BoughtReview> bought,
      Function<BoughtReview, String> name,
      List<GambleKind> kinds) {
    Map<String, List<BoughtReview>> groups = new TreeMap<>();
    for (BoughtReview each : bought) {
      groups.computeIfAbsent(name.apply(each), kind -> new ArrayList<>()).add(each);
    }
    groups.forEach((kind, group) -> kinds.add(kind(by, kind, group)));
  }

  private static GambleKind kind(By by, String name, List<BoughtReview> group) {
    return new GambleKind(
        by,
        name,
        group.size(),
        number(group, Verdict.Kind.PAID),
        number(group, Verdict.Kind.DID_NOT_PAY),
        number(group, Verdict.Kind.UNDECIDED),
        number(group, Verdict.Kind.TOO_YOUNG),
        group.stream().mapToDouble(BoughtReview::landed).sum(),
        group.stream().mapToDouble(BoughtReview::planned).sum(),
        group.stream().mapToDouble(BoughtReview::expected).sum());
  }

  private static int number(List<BoughtReview> group, Verdict.Kind kind) {
    return (int) group.stream().filter(each -> each.verdict().kind() == kind).count();
  }
}
