/**
 * The command line. Start at {@link growingon.command.Main}; each command reads as a list: read,
 * check, project, account, describe, write. Only this package prints or ends the program. May use
 * every package.
 */
package growingon.command;
