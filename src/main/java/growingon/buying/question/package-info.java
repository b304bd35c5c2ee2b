/**
 * What is asked: how many of each offer, what is held of each lot, and what a choice of them is
 * worth on draws. Start at {@link growingon.buying.question.Question}.
 */
package growingon.buying.question;
