/**
 * Runs candidates, each grade ladder by itself and each of its runs once: what they come to, on the
 * plan's line and on draws, and what room and hours beyond those there are cost. Start at {@link
 * growingon.buying.engine.Engine}.
 */
package growingon.buying.engine;
