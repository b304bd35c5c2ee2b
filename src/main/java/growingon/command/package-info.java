/** The command line. */
package growingon.command;
