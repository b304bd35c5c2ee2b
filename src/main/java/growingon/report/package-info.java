/**
 * What a report says, as plain tables, charts and notes; no file formats, no arithmetic beyond
 * totals and rounding. Takes the results of {@code project}, {@code money}, {@code chance}, {@code
 * review}, {@code buying} and {@code fit}; {@code write} turns a report into files. Nothing stands
 * here itself: a report is made of what is in {@code model}, and each command has a room.
 */
package growingon.report;
