/**
 * Growth and loss assumptions learnt from a nursery's own records, and how good its forecasts were.
 * Start at {@link growingon.fit.Fit}: records ({@link growingon.fit.past.FitRecords}) become
 * intervals between two measurements ({@code Past}, {@code Intervals}), which are held against what
 * the engine expects of them ({@code Expectations}) to estimate speeds, losses and spreads; {@code
 * Verdicts} says which values the records contradict. May use {@code nursery} with its library,
 * {@code growth}, {@code project}, {@code money}, {@code chance} and {@code review}.
 */
package growingon.fit;
