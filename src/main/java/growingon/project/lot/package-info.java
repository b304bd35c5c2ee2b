/**
 * One lot by itself: what does not change about it while it is projected, where and in what it
 * stands, what speeds it and kills it, and its history. Start at {@link
 * growingon.project.lot.LotPlan}.
 */
package growingon.project.lot;
