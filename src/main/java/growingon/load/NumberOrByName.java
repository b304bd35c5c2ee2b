package growingon.load;

/** The sort of a JSON value that is one number for all, or an object with one for each name. */
final class NumberOrByName {
  private NumberOrByName() {}
}
