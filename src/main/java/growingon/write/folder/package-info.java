/**
 * Folders of reports: what the program wrote there, what is the grower's own, and the swap that
 * loses neither.
 */
package growingon.write.folder;
