package growingon.project.history;

/**
 * Old pots that can be used again.
 *
 * @param month offset of the first month in which they can be used
 * @param pot name of the pot
 * @param amount pots
 */
public record Freed(int month, String pot, double amount) {}
