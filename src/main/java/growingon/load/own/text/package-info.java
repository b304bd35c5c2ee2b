/**
 * What one cell or heading says: numbers of plants, money, months and units as growers write them
 * in six languages. {@link growingon.load.own.text.Read} is what was made of a cell.
 */
package growingon.load.own.text;
