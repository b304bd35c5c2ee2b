/**
 * Reads tables and JSON into the domain and checks them across files; finds every problem at once.
 * Start at {@link growingon.load.Loader}: a path goes in, {@link growingon.nursery.Inputs} or
 * problems come out. The columns of each {@code ...Table}, each a {@link
 * growingon.load.row.Heading}, and its class comment are the specification of that table; {@link
 * growingon.load.row.Row} is the one reader behind CSV, XLSX and JSON. {@link
 * growingon.load.FrozenReader} reads back what the program froze itself. May use {@code nursery}
 * with its library and {@code load.own}.
 */
package growingon.load;
