/** The months of a plan, spans of calendar months, and how a year is shared among its months. */
package growingon.nursery.time;
