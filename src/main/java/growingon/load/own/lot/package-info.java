/** A lot of a grower's list: what was read of it, what was answered, and how it is named. */
package growingon.load.own.lot;
