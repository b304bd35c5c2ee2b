package growingon.problem.advice;

import growingon.problem.MarkedText;
import growingon.problem.Problem;
import growingon.problem.Reason;
import growingon.problem.Severity;
import growingon.problem.Where;
import java.util.Collection;
import java.util.List;

/**
 * How everything is said about an input: what was found is shown as it stands there, but cut short,
 * and without letters that are not seen.
 */
final class Wording {
  /** Longest piece of an input that is shown. */
  private static final int LONGEST = 100;

  private Wording() {}

  static boolean isJson(Where where) {
    return where.file().endsWith(".json");
  }

  /** One of which nothing stands in the input that could be shown; so of a warning and a notice. */
  static Problem error(Where where, Reason reason, String sentence, String remedy) {
    return error(where, reason, sentence, "", remedy);
  }

  static Problem warning(Where where, Reason reason, String sentence, String remedy) {
    return warning(where, reason, sentence, "", remedy);
  }

  static Problem notice(Where where, Reason reason, String sentence, String remedy) {
    return notice(where, reason, sentence, "", remedy);
  }

  static Problem error(Where where, Reason reason, String sentence, String found, String remedy) {
    return of(Severity.ERROR, where, reason, sentence, found, remedy);
  }

  static Problem warning(Where where, Reason reason, String sentence, String found, String remedy) {
    return of(Severity.WARNING, where, reason, sentence, found, remedy);
  }

  static Problem notice(Where where, Reason reason, String sentence, String found, String remedy) {
    return of(Severity.NOTICE, where, reason, sentence, found, remedy);
  }

  static Problem of(
      Severity severity, Where where, Reason reason, String sentence, String found, String remedy) {
    return new Problem(severity, reason, sentence, where, shown(found), remedy);
  }

  /** One of a number that was reckoned, and so is not as it stands in an input. */
  static Problem warning(
      Where where, Reason reason, String sentence, MarkedText found, String remedy) {
    return new Problem(
        Severity.WARNING, reason, new MarkedText(sentence), where, found, new MarkedText(remedy));
  }

  /** Fit to print: one line, not too long, nothing that hides or turns the text around it. */
  static String shown(String text) {
    String seen =
        MarkedText.asItIs(text)
            .marked()
            .replaceAll("[\\p{Cc}\\p{Zl}\\p{Zp}]+", " ")
            .replaceAll("\\p{Cf}", "")
            .strip();
    int letters = seen.codePointCount(0, seen.length());
    return letters <= LONGEST
        ? seen
        : seen.substring(0, seen.offsetByCodePoints(0, LONGEST)) + "...";
  }

  /** As in "lot, species and form". */
  static String list(Collection<String> words) {
    List<String> shown = words.stream().map(Wording::shown).sorted().toList();
    if (words instanceof List<String> ordered) {
      shown = ordered.stream().map(Wording::shown).toList();
    }
    if (shown.size() < 2) {
      return String.join("", shown);
    }
    int last = shown.size() - 1;
    return String.join(", ", shown.subList(0, last)) + " and " + shown.get(last);
  }
}
