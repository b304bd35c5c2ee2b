/**
 * Runs candidates, each grade ladder by itself and each of its runs once. Start at {@link
 * growingon.buying.engine.Engine}.
 */
package growingon.buying.engine;
