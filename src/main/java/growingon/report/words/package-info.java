/** What is said of a plan: the sentences of Summary, terminal and page, one class a question. */
package growingon.report.words;
