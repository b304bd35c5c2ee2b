/** How good kept plans were. Start at {@link growingon.fit.score.Scores}. */
package growingon.fit.score;
