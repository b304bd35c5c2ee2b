package growingon.problem;

/**
 * The one home of every sentence a user may read when something about the input is wrong: what is
 * wrong, where, what to do. One method a fault; tests compare whole sentences.
 */
public final class Advice {
  private Advice() {}
}
