/**
 * The representative plants of a lot: how they lie in trunk, vigour and quality, and how they are
 * sorted, grow, and reach grades.
 */
package growingon.project.slice;
