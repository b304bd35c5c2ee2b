/**
 * Folders that the program writes: what it wrote there, what is the grower's own, and the swap that
 * loses neither; new nursery folders, frozen files, and the file of problems. What cannot be done
 * is an exception that says why. Start at {@link growingon.write.folder.FolderSwap}.
 */
package growingon.write.folder;
