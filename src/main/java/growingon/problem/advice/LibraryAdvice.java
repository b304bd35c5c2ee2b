package growingon.problem.advice;

import growingon.problem.Problem;
import growingon.problem.Reason;
import growingon.problem.Severity;
import growingon.problem.Where;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** The sentences of {@link Advice} that are about the library of species. */
public final class LibraryAdvice {
  private static final String OWN = "your own growth and losses";
  private static final String KNOW_BETTER = "type your own growth where you know better";

  private LibraryAdvice() {}

  public static Problem notInLibrary(Where where, String found, List<String> nearest) {
    String near =
        nearest.isEmpty()
            ? ""
            : nearest.size() == 1
                ? "the nearest name is " + Wording.list(nearest) + "; else "
                : "the nearest names are " + Wording.list(nearest) + "; else ";
    return Wording.error(
        where,
        Reason.UNKNOWN_NAME,
        "the library has no such species",
        found,
        near + "write another of its names, deciduous or evergreen, or " + OWN);
  }

  public static Problem severalInLibrary(Where where, String found, List<String> names) {
    return Wording.error(
        where,
        Reason.UNKNOWN_NAME,
        "the library has several: " + Wording.list(names),
        found,
        "write under library which is meant");
  }

  public static Problem relation(Where where, String found, String row) {
    return Wording.notice(
        where,
        Reason.ASSUMED,
        "the library takes a near relation for it, " + row,
        found,
        KNOW_BETTER);
  }

  public static Problem cultivar(Where where, String found, String row) {
    return Wording.notice(
        where,
        Reason.ASSUMED,
        "the library leaves out the cultivar and takes " + row,
        found,
        KNOW_BETTER);
  }

  public static Problem genus(
      Where where, String found, String row, String kind, Optional<String> slip) {
    return Wording.of(
        slip.isPresent() ? Severity.WARNING : Severity.NOTICE,
        where,
        Reason.ASSUMED,
        "the library does not have it and takes the middle of " + row + ", as " + kind,
        found,
        slip.map(name -> "if " + name + " is meant, write that").orElse(KNOW_BETTER));
  }

  public static Problem kind(Where where, String found, String species) {
    return Wording.notice(
        where,
        Reason.ASSUMED,
        "the library takes the middle of all its " + found + " rows",
        species,
        KNOW_BETTER);
  }

  public static Problem climateBeyond(Where where, String found, String climate) {
    return Wording.error(
        where,
        Reason.OUT_OF_RANGE,
        "the library is not for a "
            + climate
            + " climate: its trees grew in temperate places, and live oaks in Florida nursery rows"
            + " made 30 mm a year where it would say 5 to 18",
        found,
        "type " + OWN);
  }

  public static Problem climateUnlike(Where where, String found, String climate) {
    return Wording.warning(
        where,
        Reason.ASSUMED,
        "the trees of the library grew in temperate places, and the nursery lies in a "
            + climate
            + " climate",
        found,
        "measure 20 trees of a species, and type what they make a year");
  }

  public static Problem conditionUnknown(Where where, String condition, List<String> known) {
    return Wording.error(
        where,
        Reason.MISSING,
        "the library knows no such growing condition",
        condition,
        namesFor(condition, known));
  }

  public static Problem conditionOfLotUnknown(
      Where where,
      String found,
      String lot,
      Optional<String> step,
      String condition,
      String species,
      List<String> known) {
    return Wording.error(
        where,
        Reason.MISSING,
        "the lot "
            + Wording.shown(lot)
            + " comes to grow in the condition "
            + Wording.shown(condition)
            + step.map(name -> " at the step " + Wording.shown(name)).orElse("")
            + ", which the library does not know, and "
            + Wording.shown(species)
            + " has no growth of its own there",
        found,
        namesFor(condition, known));
  }

  private static String namesFor(String condition, List<String> known) {
    String shown = Wording.shown(condition);
    return "call it one of "
        + Wording.list(known)
        + ", or add the setting library condition "
        + shown
        + " with one of these, or add mm a year "
        + shown;
  }

  public static Problem speciesWithoutRow(
      Where where, String found, Optional<String> nearest, String rowToPaste) {
    return Wording.error(
        where,
        Reason.UNKNOWN_NAME,
        "unknown species",
        found,
        nearest.map(near -> "the nearest known one is " + near + "; or ").orElse("")
            + "add to the table species the row "
            + rowToPaste);
  }

  public static Problem speciesOfSeveral(
      Where where, String found, Optional<String> nearest, List<String> names) {
    return Wording.error(
        where,
        Reason.UNKNOWN_NAME,
        "unknown species",
        found,
        nearest.map(near -> "the nearest known one is " + near + "; or ").orElse("")
            + "add a row to the table species, with one of "
            + Wording.list(names)
            + " under library");
  }

  public static Problem sureWithoutGrowth(
      Where where, String condition, Collection<String> curves) {
    return Wording.error(
        where,
        Reason.UNKNOWN_NAME,
        "the species has no growth in this condition",
        condition,
        "it has growth for " + Wording.list(curves));
  }
}
