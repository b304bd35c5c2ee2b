package growingon.load;

import growingon.load.file.AnswersGiven;
import growingon.load.file.NurseryFiles;
import growingon.load.list.OwnNursery;
import growingon.load.list.SiteSaid;
import growingon.load.own.heading.OwnWords;
import growingon.load.own.lot.Site;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Where a nursery's past is written down beside its tables.
 *
 * @param nursery its folder or workbook
 * @param older lists of the grower's own that a newer one has taken the place of
 * @param words what the grower has said that words of such lists mean
 * @param site of the nursery, by which such lists are read
 * @param isOwn whether today's list is in the grower's own words
 * @param month month of today's own list, where its title or name says one
 * @param uncounted lots of which today's own list has no exact number
 * @param unmeasured lots whose trunks today's own list does not state
 */
record PastSources(
    Path nursery,
    List<Path> older,
    OwnWords words,
    Site site,
    boolean isOwn,
    Optional<YearMonth> month,
    Set<String> uncounted,
    Set<String> unmeasured) {
  PastSources {
    older = List.copyOf(older);
    uncounted = Set.copyOf(uncounted);
    unmeasured = Set.copyOf(unmeasured);
  }

  static PastSources of(Path nursery, OwnFiles files) {
    NurseryFiles tables = files.nursery();
    return new PastSources(
        nursery,
        files.older(nursery),
        AnswersGiven.words(tables.tables()),
        SiteSaid.of(tables).site(),
        files.own().isPresent(),
        files.own().flatMap(OwnNursery::month),
        files.own().map(OwnNursery::uncounted).orElse(Set.of()),
        files.own().map(OwnNursery::unmeasured).orElse(Set.of()));
  }
}
