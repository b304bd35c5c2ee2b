package growingon.report.edition;

import growingon.nursery.Inputs;
import growingon.nursery.Plan;
import growingon.plan.Planned;
import growingon.report.compare.CompareReport.Side;
import growingon.report.figures.Context;
import growingon.report.model.Audience;
import growingon.report.model.Report;
import growingon.report.text.Phrases;
import growingon.review.Review;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * A plan as somebody else may see it. What is left out cannot leak: the plan is projected again
 * from inputs that do not hold it ({@link #seen}), and the report is put together from named tables
 * and columns.
 *
 * @param audience for whom
 * @param costs whether a partner sees suppliers, unit costs, foreign currencies and offers not
 *     taken
 * @param prices whether a customer sees list prices
 */
public record Edition(Audience audience, boolean costs, boolean prices) {
  public Edition {
    Objects.requireNonNull(audience);
    if (costs && audience != Audience.PARTNER) {
      throw new IllegalArgumentException("only a partner is shown costs");
    }
    if (prices && audience != Audience.CUSTOMER) {
      throw new IllegalArgumentException("prices are asked for a customer; the others see them");
    }
  }

  /** What is added to the name of the report's folder: {@code -for-bank}. */
  public String folderEnding() {
    return "-for-" + audience.name().toLowerCase(Locale.ROOT);
  }

  /**
   * What the edition's report is called.
   *
   * @param seen what {@link #seen} gave
   */
  public String title(Inputs seen) {
    return audience == Audience.CUSTOMER ? CustomerEdition.TITLE : seen.scenario().plan().name();
  }

  /** A plan's name may speak of an offer; only a partner sees it. */
  static String planName(Audience audience, Plan plan, Phrases say) {
    return switch (audience) {
      case PARTNER -> plan.name();
      case BANK -> "Plan from " + say.month(plan.firstMonth());
      case CUSTOMER -> CustomerEdition.TITLE;
    };
  }

  /** An edition of what is no plan, for a partner or a bank. */
  public static Edition lookingBack(Audience audience) {
    return new Edition(audience, false, false);
  }

  /** What happened against a plan, as a partner or a bank may see it. */
  public Report review(Inputs read, Review review) {
    return new ReviewEdition(read, review, audience).report().madeFor(audience);
  }

  /**
   * What the edition of two plans is called.
   *
   * @param first name of the first plan
   * @param second that of the second
   */
  public String compareTitle(String first, String second) {
    return CompareEdition.title(audience, first, second);
  }

  /** Two plans side by side, as a partner or a bank may see them. */
  public Report compare(Side first, Side second) {
    return new CompareEdition(this, first, second).report().madeFor(audience);
  }

  /**
   * The inputs without what nobody else is to see: lots under an alias, no papers and notes, no
   * assumptions as typed, no folders, and offers only if costs may be seen.
   */
  public Inputs seen(Inputs read) {
    return new Anonymous(this, read).inputs();
  }

  /**
   * The edition's report.
   *
   * @param seen what {@link #seen} gave, worked out without draws
   * @param whole the plan as its grower sees it, with its chances; of these an edition tells odds
   */
  public Report report(Planned seen, Optional<Planned> whole) {
    Optional<Context> risks = whole.map(plan -> new Context(plan, List.of()));
    Report report =
        switch (audience) {
          case PARTNER -> PartnerEdition.of(seen, risks, costs);
          case BANK -> BankEdition.of(seen, risks);
          case CUSTOMER -> CustomerEdition.of(seen, prices);
        };
    return report.madeFor(audience);
  }
}
