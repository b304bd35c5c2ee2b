/**
 * Looks for the best candidate, move by move. Start at {@link growingon.buying.search.Search};
 * {@link growingon.buying.search.Climb} takes the moves that help, and a {@link
 * growingon.buying.search.Judge} says what they are worth.
 */
package growingon.buying.search;
