/**
 * Reads a grower's own stock list as it is, whatever its headings, language and shape: which row is
 * the heading, what each column and cell means, which plant of the library a name is. Takes plain
 * sheets, gives the lots with all that must be asked, and an account of every row. Start reading at
 * {@link growingon.load.own.ListReader}. May use nursery and its library; knows no file format.
 */
package growingon.load.own;
