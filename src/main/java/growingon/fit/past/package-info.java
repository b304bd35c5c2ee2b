/**
 * A nursery's past as one plan, with its lots and everything that was measured of them. Start at
 * {@link growingon.fit.past.Past}.
 */
package growingon.fit.past;
