/**
 * How lists were read, in a few sentences and in tables for whoever wants to check it. Start at
 * {@link growingon.load.own.account.OwnReport}.
 */
package growingon.load.own.account;
