/**
 * Projects lots month by month: representative plants, steps, space, growth, losses, grading,
 * sales.
 */
package growingon.project;
