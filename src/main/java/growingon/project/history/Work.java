package growingon.project.history;

/**
 * Hours of a job on a lot in a month.
 *
 * @param month offset from the first month
 * @param job name of the step or of other cash, or {@link #WINTER_MOVE}, {@link #SELLING} or {@link
 *     #CARE}
 * @param plants plants worked on
 * @param hours hours
 */
public record Work(int month, String job, double plants, double hours) {
  /** The job of moving plants into and out of winter places. */
  public static final String WINTER_MOVE = "winter move";

  /** The job of selling: to lift, dress, label and hand over. */
  public static final String SELLING = "selling";

  /** The job of watering, weeding and the like by area. */
  public static final String CARE = "care";
}
