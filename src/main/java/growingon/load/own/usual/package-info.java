/**
 * The usual nursery around a list: species, pots, places, routes, grades and prices that the list
 * does not say. Start at {@link growingon.load.own.usual.UsualNursery}.
 */
package growingon.load.own.usual;
