/** Whether the records contradict an assumption, and the words for it. */
package growingon.fit.verdict;
