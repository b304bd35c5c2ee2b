/**
 * What can be wrong with an input, as data. Start at {@link growingon.problem.Problem}; every
 * sentence a user may read about a fault is made in {@code problem.advice}. Uses nothing; every
 * package may use it.
 */
package growingon.problem;
