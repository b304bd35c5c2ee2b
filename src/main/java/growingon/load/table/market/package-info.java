/** The tables of what is sold and for how much: grades, qualities, demand, and other cash. */
package growingon.load.table.market;
