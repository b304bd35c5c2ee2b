/**
 * What the past says, as intervals between two measurements and spans between two counts. Start at
 * {@link growingon.fit.evidence.Evidence}.
 */
package growingon.fit.evidence;
