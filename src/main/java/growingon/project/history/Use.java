package growingon.project.history;

/**
 * What the work on a lot uses up in a month.
 *
 * @param month offset from the first month
 * @param kind pot, component or material
 * @param item its name
 * @param amount pots, loose litres with waste, or the material's units
 */
public record Use(int month, Kind kind, String item, double amount) {
  /** What sort of item. */
  public enum Kind {
    /** Pots, counted. */
    POT,
    /** Substrate components, loose litres. */
    COMPONENT,
    /** Materials in their own unit. */
    MATERIAL
  }
}
