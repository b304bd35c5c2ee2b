/** The tables of places, of the care of what stands there, and of hours. */
package growingon.load.table.place;
