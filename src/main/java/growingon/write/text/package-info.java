/**
 * Text as files hold it: numbers and their digits, safe characters, CSV, and how wide words are.
 */
package growingon.write.text;
