/**
 * The one home of every sentence a user may read when something about the input is wrong: what is
 * wrong, where, what to do. One method a fault, one class a part of the input; tests compare whole
 * sentences.
 */
package growingon.problem.advice;
