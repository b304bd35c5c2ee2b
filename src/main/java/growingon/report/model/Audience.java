package growingon.report.model;

/** For whom an edition of a plan is. */
public enum Audience {
  /** Somebody who works along: sees everything but names, papers and, unless told, costs. */
  PARTNER,
  /** Sees totals, cash and what the stock is worth. */
  BANK,
  /** Sees what is for sale. */
  CUSTOMER
}
