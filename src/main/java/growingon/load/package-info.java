/**
 * Reads tables and JSON into the domain and checks them across files; finds every problem at once.
 */
package growingon.load;
