/** The folders that commands read from and write to. */
package growingon.command.folder;
