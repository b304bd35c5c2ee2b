package growingon.report.compare;

/**
 * A value of one plan's files that is another in the other's.
 *
 * @param table table or file it belongs to
 * @param subject what it is of; empty for a setting
 * @param what heading or key
 * @param from as the first plan has it; empty if it has none
 * @param to as the second has it; empty if it has none
 * @param unit its unit, may be empty
 */
record Difference(String table, String subject, String what, String from, String to, String unit) {}
