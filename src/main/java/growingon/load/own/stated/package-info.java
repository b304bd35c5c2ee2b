/**
 * What a list states in columns of the stock table that need no more than their cell: months of
 * work, shares of qualities, spacing. Start at {@link growingon.load.own.stated.StatedCells}.
 */
package growingon.load.own.stated;
