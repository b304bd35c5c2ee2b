/**
 * A plan worked out once for all who tell of it: what was read is projected and booked, what was
 * bought is weighed, and luck is drawn where the plan says so.
 */
package growingon.plan;
