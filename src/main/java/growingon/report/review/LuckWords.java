package growingon.report.review;

import growingon.review.Judged;
import growingon.review.Review;
import growingon.review.kept.AcrossDraws;
import java.util.Optional;

/** What is said of how many figures luck alone puts outside of what was likely. */
public final class LuckWords {
  private LuckWords() {}

  /**
   * Lots of one nursery have good and bad seasons together: what the number outside may be by luck;
   * empty where the kept plan does not say it.
   */
  public static Optional<String> together(Review review) {
    long outside = review.judged().stream().filter(each -> each.take() != Judged.Take.LUCK).count();
    return review.insideByLuck().map(inside -> together(inside, outside));
  }

  private static String together(AcrossDraws.Inside inside, long outside) {
    int least = inside.of() - inside.high();
    int most = inside.of() - inside.low();
    String take =
        outside > most
            ? "so many are more than luck"
            : outside < least ? "so few are rare" : "as many may be luck";
    return "Lots have good and bad seasons together: in nine of ten draws luck alone put %s of them outside; %s."
        .formatted(least == most ? "%d".formatted(most) : "%d to %d".formatted(least, most), take);
  }
}
