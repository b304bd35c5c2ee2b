/**
 * One plant in its pot: what fills the pot, what it weighs, how it may be lifted, and the floor it
 * takes.
 */
package growingon.project.pot;
