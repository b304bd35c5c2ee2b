/**
 * An assumption held against the records, as data; what is lacking for a verdict; and how fast this
 * nursery grows against the library. Start at {@link growingon.fit.value.Value}.
 */
package growingon.fit.value;
