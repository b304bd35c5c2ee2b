/**
 * What the daybook says happened, lot by lot, and what that cost; what looks wrong in it; and what
 * is there by it, projected on, with its real money. Start at {@link
 * growingon.review.book.Bookkeeping} and {@link growingon.review.book.Standing}.
 */
package growingon.review.book;
