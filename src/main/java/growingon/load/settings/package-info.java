/** The settings of a nursery, and a plan with its orders and holds. */
package growingon.load.settings;
