/**
 * Text as files hold it: numbers and their digits, safe characters, CSV, how wide words are; the
 * list of problems as text, and proposals as edits of the grower's own files.
 */
package growingon.write.text;
