/** What the daybook says happened, lot by lot, and what that cost; what looks wrong in it. */
package growingon.review.book;
