/**
 * Did a bulk purchase pay: what it gained, and to which causes the difference from the plan goes.
 */
package growingon.review.bought;
