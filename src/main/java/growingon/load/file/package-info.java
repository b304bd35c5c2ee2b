/**
 * The files of a nursery as tables by name, before anyone reads their rows. Start at {@link
 * growingon.load.file.NurseryFiles}.
 */
package growingon.load.file;
