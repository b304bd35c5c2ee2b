/**
 * All that is written down of what happened, made into lines of one daybook: stock lists and
 * receipts besides the daybook itself. Start at {@link growingon.review.written.WrittenDown}.
 */
package growingon.review.written;
