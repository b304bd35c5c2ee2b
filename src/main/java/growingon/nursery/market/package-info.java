/** What can be sold at what price, by grade and quality, and what else brings or costs money. */
package growingon.nursery.market;
