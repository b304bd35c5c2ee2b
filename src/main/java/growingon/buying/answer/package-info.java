/**
 * What is said of what was found: of each offer, each hold, each limit and of the plan that is
 * recommended. Start at {@link growingon.buying.answer.Answer}.
 */
package growingon.buying.answer;
