/** A plan as it was frozen, and what it expected by month. */
package growingon.review.kept;
