/**
 * How numbers are checked, compared and written; and how months and money are written for whoever
 * reads a report ({@link growingon.nursery.number.Writing}).
 */
package growingon.nursery.number;
