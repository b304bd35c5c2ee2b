package growingon.project.slice;

import growingon.nursery.market.Quality;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Plants taken from a lot.
 *
 * @param grade index of the grade they were ready as, −1 for none
 * @param quality their quality
 * @param plants how many
 * @param mmAboveLeast mean trunk above the grade's least, mm; 0 without a grade, and where nobody
 *     asks for it
 */
public record Taken(int grade, Quality quality, double plants, double mmAboveLeast) {
  /**
   * Takes plants by what is said of them: what is not said is taken from what is ready, dearest
   * grade first and best quality first. What was taken although nothing was ready comes from all
   * plants alike.
   *
   * @param from plants, graded for sale
   * @param grade their grade, if said
   * @param quality their quality, if said
   * @param number how many
   * @param dearestFirst indexes of all grades
   * @param isMeasured whether it is asked how thick they are, which takes longer than all else
   */
  public static List<Taken> of(
      Growing from,
      Optional<Integer> grade,
      Optional<Quality> quality,
      double number,
      List<Integer> dearestFirst,
      boolean isMeasured) {
    List<Taken> taken = new ArrayList<>();
    List<Integer> grades = grade.map(List::of).orElse(dearestFirst);
    List<Quality> qualities = quality.map(List::of).orElse(List.of(Quality.values()));
    double left = number - ready(from, grades, qualities, number, isMeasured, taken);
    left -= ready(from, grades, List.of(Quality.values()), left, isMeasured, taken);
    left -= ready(from, dearestFirst, List.of(Quality.values()), left, isMeasured, taken);
    if (left > 0) {
      Quality named = quality.orElse(Quality.FIRST);
      taken.add(new Taken(grade.orElse(-1), named, unready(from, left), 0));
    }
    return taken;
  }

  private static double ready(
      Growing from,
      List<Integer> grades,
      List<Quality> qualities,
      double number,
      boolean isMeasured,
      List<Taken> taken) {
    double left = number;
    for (int grade : grades) {
      for (Quality quality : qualities) {
        double ready = from.ready(quality, grade);
        if (left > 0 && ready > 0) {
          double plants = Math.min(left, ready);
          double mm = isMeasured ? from.mmAboveLeast(quality, grade) / ready : 0;
          from.sell(quality, grade, plants / ready);
          taken.add(new Taken(grade, quality, plants, mm));
          left -= plants;
        }
      }
    }
    return number - left;
  }

  /** Plants that no grade was found ready for; kept ones go last. */
  private static double unready(Growing from, double number) {
    double alike = from.takeAlike(number);
    return alike + from.die(number - alike);
  }
}
