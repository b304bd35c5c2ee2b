/**
 * How numbers, dates, lists, odds and spells of months are put into words, the same in every
 * report.
 */
package growingon.report.text;
