package growingon.buying.question;

/**
 * How it is asked.
 *
 * @param scope which choices are asked for
 * @param aim what of the draws is to be as high as can be
 * @param isQuick whether the plan's line is enough
 * @param draws draws to judge on, at least those of the plan
 */
public record Wish(Question.Scope scope, Aim aim, boolean isQuick, int draws) {
  /** Draws to judge on where neither plan nor command line ask for more. */
  public static final int LEAST_DRAWS = 200;
}
