/**
 * Growth and loss assumptions learnt from a nursery's own records, and how good its forecasts were.
 * Start at {@link growingon.fit.Fit}: records ({@link growingon.fit.past.FitRecords}) become
 * intervals between two measurements ({@code past}, {@code evidence}), which are held against what
 * the engine expects of them to estimate speeds and spreads ({@code growth}) and losses ({@code
 * loss}); {@code verdict} says which values the records contradict. May use {@code nursery} with
 * its library, {@code growth}, {@code project}, {@code whole}, {@code money}, {@code chance} and
 * {@code review}.
 */
package growingon.fit;
