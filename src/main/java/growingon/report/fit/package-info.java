/**
 * What a grower's own records say of the assumptions. Start at {@link
 * growingon.report.fit.FitReport}.
 */
package growingon.report.fit;
