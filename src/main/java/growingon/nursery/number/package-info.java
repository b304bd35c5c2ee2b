/** How numbers are checked, compared and written. */
package growingon.nursery.number;
