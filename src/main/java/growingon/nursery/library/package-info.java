/**
 * The library of species: what may be taken for a species that nobody has measured in the nursery.
 * Start at {@link growingon.nursery.library.Library}: a name goes in, figures with their basis and
 * sources come out, or the names that might be meant. Its three tables stand beside it as
 * resources; values that they do not state are worked out by {@link
 * growingon.nursery.library.Taxon#in}. Part of the domain, so whoever may use {@code nursery} may
 * use it.
 */
package growingon.nursery.library;
