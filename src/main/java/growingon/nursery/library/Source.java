package growingon.nursery.library;

import growingon.nursery.number.Check;

/**
 * Where figures of the library come from. Only what was derived from it is shipped, no table of it.
 *
 * @param id such as S01
 * @param citation authors, title and where it appeared
 * @param year or years
 * @param measures what it measures, and what of it is used
 * @param licence under what terms
 * @param read complete, or in part where its text was not read in full
 * @param usedFor growth, losses, or another figure
 */
public record Source(
    String id,
    String citation,
    String year,
    String measures,
    String licence,
    String read,
    String usedFor) {
  public Source {
    Check.named(id, "a source");
    Check.named(citation, "the citation of " + id);
  }
}
