/** What is known to have happened to a lot, which takes the place of what was to be expected. */
package growingon.project.known;
