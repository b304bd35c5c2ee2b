package growingon.problem.advice;

import static growingon.problem.advice.Wording.error;

import growingon.problem.Problem;
import growingon.problem.Reason;
import growingon.problem.Where;

/** What is wrong, where, and what to do: what the program froze itself. */
public final class KeptPlanAdvice {
  private KeptPlanAdvice() {}

  private static final String FREEZE_AGAIN =
      "bring the file back as it was, or keep the plan again with plan --keep";

  public static Problem frozenLacks(Where where, String key) {
    return error(where, Reason.MISSING, "the key " + key + " is missing", FREEZE_AGAIN);
  }

  public static Problem frozenWrong(Where where, String found) {
    return error(
        where, Reason.WRONG_VALUE, "this is not what was written here", found, FREEZE_AGAIN);
  }
}
