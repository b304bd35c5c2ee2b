/**
 * What can be wrong with an input, as data. Start at {@link growingon.problem.Problem}; every
 * sentence a user may read about a fault is made in {@link growingon.problem.Advice}, or in {@link
 * growingon.problem.LibraryAdvice} if it is about the library of species. Uses nothing; every
 * package may use it.
 */
package growingon.problem;
