/** What really happened against the plan. Start at {@link growingon.report.review.ReviewReport}. */
package growingon.report.review;
