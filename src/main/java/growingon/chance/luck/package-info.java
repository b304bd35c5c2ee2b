/**
 * The luck of a draw: random numbers by key, what is not known of a nursery, and what differs from
 * season to season. Start at {@link growingon.chance.luck.DrawnLuck}.
 */
package growingon.chance.luck;
