/** What a projection needs: room, hours and supplies, added up from its histories. */
package growingon.project.need;
