/** Where plants stand, how far apart, and the care of what stands there. */
package growingon.nursery.place;
