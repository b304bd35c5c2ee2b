package growingon.load.source;

/** The sort of a JSON value that is one number for all, or an object with one for each name. */
public final class NumberOrByName {
  private NumberOrByName() {}
}
