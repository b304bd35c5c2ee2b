/**
 * How fast plants grow and how unlike they are, learnt from intervals. Start at {@link
 * growingon.fit.growth.SpeedFit}; {@link growingon.fit.growth.IntervalLaw} is the law of all
 * errors.
 */
package growingon.fit.growth;
