/** How many plants are lost, learnt from spans. Start at {@link growingon.fit.loss.Losses}. */
package growingon.fit.loss;
