/**
 * The table of routes: when a step is due and which steps can follow each other. Start at {@link
 * growingon.load.table.route.RoutesTable}.
 */
package growingon.load.table.route;
