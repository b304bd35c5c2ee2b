/**
 * What happens to a lot, as it is taken down: plants, sales, steps, work and supplies, month by
 * month. Start at {@link growingon.project.history.Recorder}.
 */
package growingon.project.history;
