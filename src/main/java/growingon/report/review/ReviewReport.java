package growingon.report.review;

import growingon.nursery.Inputs;
import growingon.nursery.Settings;
import growingon.problem.Problem;
import growingon.report.model.Answer;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.text.Phrases;
import growingon.review.Review;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Puts the report of a review together: what happened against the plan, and what paid. */
public final class ReviewReport {
  private ReviewReport() {}

  /** What the report of a plan's review is called. */
  public static String title(String plan) {
    return plan + ", review";
  }

  /**
   * Describes a review.
   *
   * @param inputs what was read
   * @param problems everything found while reading; what is wrong in the records is added
   */
  public static Report of(Inputs inputs, List<Problem> problems, Review review) {
    Set<Problem> all = new LinkedHashSet<>(problems);
    all.addAll(review.faults());
    Settings settings = inputs.scenario().nursery().settings();
    ReviewWords words = new ReviewWords(inputs, review);
    Phrases say = Phrases.of(settings);
    ReviewCharts charts = new ReviewCharts(review, say);
    return Report.of(
            title(inputs.scenario().plan().name()),
            settings.name(),
            say,
            review.firstMonth().toString())
        .sheets(sheets(review, words, charts, say))
        .charts(charts.all())
        .extra(AgainstPlanSheet.allLots(review, settings.currency()))
        .headlines(words.headlines())
        .problems(List.copyOf(all))
        .answers(answers(words))
        .build();
  }

  private static List<Sheet> sheets(
      Review review, ReviewWords words, ReviewCharts charts, Phrases say) {
    String currency = say.currency();
    List<Sheet> sheets = new ArrayList<>();
    sheets.add(ReviewSummarySheet.of(review, words, charts, say));
    sheets.add(AgainstPlanSheet.of(review, words, say));
    sheets.add(DidItPaySheet.of(review, words, charts, currency));
    sheets.add(CausesSheet.of(review, charts, currency));
    sheets.add(GamblesSheet.of(review, currency));
    sheets.add(WithoutALineSheet.of(review, words, currency));
    sheets.add(LossesSheet.of(review, words));
    sheets.add(TraceSheet.of(review));
    sheets.add(FaultsSheet.of(review));
    return sheets;
  }

  private static List<Answer> answers(ReviewWords words) {
    List<Answer> answers = new ArrayList<>();
    if (!words.notifiable().isEmpty()) {
      answers.add(new Answer("Before you move plants", words.notifiable(), List.of(), List.of()));
    }
    answers.add(new Answer("What is compared", words.basis(), List.of(), List.of()));
    answers.add(new Answer("Did the bought lots pay", words.verdicts(), List.of(), List.of()));
    answers.add(new Answer("Where the plants went", words.plants(), List.of(), List.of()));
    answers.add(new Answer("Are the records right", words.faults(), List.of(), List.of()));
    return answers;
  }
}
