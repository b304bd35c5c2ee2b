/** The page that opens in a browser and prints: what it shows, and its template filled in. */
package growingon.write.page;
