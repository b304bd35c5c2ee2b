package growingon.whole;

/**
 * Whole plants of a lot that stand at a month's end; arrays by quality (first, second, third) and
 * grade, lowest first.
 *
 * @param kept plants that are not for sale
 * @param ungraded plants for sale in time that have no grade yet
 * @param ready plants of each quality and grade that could be sold at that moment
 * @param waiting plants of each quality and grade that have it and are not to be sold yet
 */
public record WholeStock(int kept, int ungraded, int[][] ready, int[][] waiting) {
  /** Plants of a quality and grade. */
  public int standing(int quality, int grade) {
    return ready[quality][grade] + waiting[quality][grade];
  }

  /** Plants of a grade, kept ones apart. */
  public int ofGrade(int grade) {
    int sum = 0;
    for (int quality = 0; quality < ready.length; quality++) {
      sum += standing(quality, grade);
    }
    return sum;
  }
}
