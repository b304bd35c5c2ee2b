/** The months of a plan as plain numbers, and when the steps of a route are due. */
package growingon.project.time;
