/** The steps by which a lot is grown on, when each is due, and which a lot has behind it. */
package growingon.nursery.route;
