/** An assumption held against the records, as data. Start at {@link growingon.fit.value.Value}. */
package growingon.fit.value;
