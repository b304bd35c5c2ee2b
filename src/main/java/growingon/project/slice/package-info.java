/**
 * The representative plants of a lot: how they lie in trunk, vigour and quality, and how they are
 * sorted.
 */
package growingon.project.slice;
