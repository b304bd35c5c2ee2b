/**
 * What the daybook says happened, lot by lot, and what that cost; what looks wrong in it; what is
 * there by it, projected on, with its real money; and a plan put into the form in which it is kept.
 * Start at {@link growingon.review.book.Bookkeeping} and {@link growingon.review.book.Standing}.
 */
package growingon.review.book;
