package growingon.load.own.size;

import static growingon.load.own.size.SizeRule.END;
import static growingon.load.own.size.SizeRule.N;
import static growingon.load.own.size.SizeRule.SPAN;
import static growingon.load.own.size.SizeRule.START;
import static growingon.load.own.size.SizeRule.n;
import static growingon.load.own.size.SizeRule.span;

import java.util.List;

/** How the trade writes pots: by litres, width, class or box. */
final class PotRules {
  private static final String POT_WORD =
      "(?:godets?|pots?|t(?:o|ö)pfe?|vierkant(?:topf|töpfe|e\\s*pot)?|vaso|vasetto|maceta)";

  /** No pot is so narrow: P 1 is one of a litre, P9 one of 9 cm. Common practice, no source. */
  private static final double NARROWEST_CM = 5;

  private static final double LONGEST_BOX_CM = 130;

  /** Planter bags are named by imperial pints: PB5 holds some 3 litres. Common practice. */
  private static final double LITRES_IN_A_PINT = 0.568;

  /** Litres. Common practice, no source. */
  private static final double LARGEST_TOPF = 60;

  static final List<SizeRule> ALL =
      List.of(
          SizeRule.of(
              START + N + "\\s*[x×]\\s*" + N + "\\s*[x×]\\s*" + N + "(?:\\s*cm)?" + END,
              (m, parts) -> boxOrHedge(m.group(), n(m, 1), n(m, 2), n(m, 3), parts)),
          SizeRule.of(
              START
                  + N
                  + "\\s*(?:l|lt|ltr|ltrs|litre|litres|liter|litri|litro|litros)\\.?\\s*(?:/|\\+|&|and|or|und|oder|et|ou|en|of|e|o|y)\\s*"
                  + N
                  + "\\s*(?:l|lt|ltr|ltrs|litre|litres|liter)"
                  + END,
              (m, parts) -> parts.ask("pot: %s or %s litres?".formatted(m.group(1), m.group(2)))),
          SizeRule.of(
              START
                  + "(?:(?:cont(?:ainer|eneur|enedor|enitore)?|clt|ct|co|c)\\.?\\s+)?"
                  + SPAN
                  + "\\s*-?(?:l|lt|ltr|ltrs|litre|litres|liter|litri|litro|litros)\\.?"
                  + END
                  + "(?:\\s*(?:pots?|air-?pots?|cont(?:ainer)?s?))?",
              (m, parts) -> parts.pot(PotSize.ofLitres(span(m, 1).middle()))),
          SizeRule.of(
              START + "(?:lt|ltr|litri|litros|liter|litres?)\\.?\\s*" + SPAN + END,
              (m, parts) -> parts.pot(PotSize.ofLitres(span(m, 1).middle()))),
          SizeRule.of(
              START
                  + "(?:cont(?:ainer|eneur|enedor|enitore)?|air[\\s-]?pots?|clt|ct|co|c)\\.?[\\s-]?"
                  + SPAN
                  + "(?:\\s?l(?:tr)?)?"
                  + END,
              (m, parts) -> parts.pot(PotSize.ofLitres(span(m, 1).middle()))),
          SizeRule.of(
              START + "t\\.?[\\s-]?" + SPAN + "(?:\\s?l(?:tr)?)?" + END,
              (m, parts) -> topf(m.group(), span(m, 1).middle(), parts)),
          SizeRule.of(
              START + "PB\\s?" + N + END,
              (m, parts) -> {
                parts.nodOfPot("%s is a planter bag of so many pints".formatted(m.group().strip()));
                parts.pot(PotSize.ofLitres(Math.rint(n(m, 1) * LITRES_IN_A_PINT * 10) / 10));
              }),
          SizeRule.of("#\\s?" + N + END, (m, parts) -> parts.pot(PotSize.containerClass(n(m, 1)))),
          SizeRule.of(
              START + N + "\\s*-?gal(?:lon)?s?" + END,
              (m, parts) -> parts.pot(PotSize.containerClass(n(m, 1)))),
          SizeRule.of(
              START + N + "\\s*(?:\"|”|''|in|inch|inches)\\s*pots?" + END,
              (m, parts) -> parts.pot(PotSize.roundOf(Math.rint(n(m, 1) * 2.54)))),
          SizeRule.of(
              START + "(?:" + N + "\\s*cm\\s*pots?|pots?\\s*" + N + "\\s*cm)" + END,
              (m, parts) -> parts.pot(PotSize.square(m.group(1) == null ? n(m, 2) : n(m, 1)))),
          SizeRule.of(
              START + "(?:vaso|topf|maceta|pot\\s*ø)\\s*(?:ø|cm)?\\s*" + N + "(?:\\s*cm)?" + END,
              (m, parts) -> parts.pot(PotSize.roundOf(n(m, 1)))),
          SizeRule.of(
              START + POT_WORD + "\\s*:?\\s*" + N + "\\s*[x×]\\s*" + N + "(?:\\s*cm)?" + END,
              (m, parts) -> parts.pot(PotSize.square(Math.min(n(m, 1), n(m, 2))))),
          SizeRule.of(
              START + N + "\\s*[x×]\\s*" + N + "(?:\\s*cm)?\\s*" + POT_WORD + END,
              (m, parts) -> parts.pot(PotSize.square(Math.min(n(m, 1), n(m, 2))))),
          SizeRule.of(
              START + POT_WORD + "\\s*:?\\s*" + N + "\\s*cm" + END,
              (m, parts) -> parts.pot(PotSize.square(n(m, 1)))),
          SizeRule.of(
              START + "(?:godets?|vierkant(?:topf|töpfe|e\\s*pot))\\s*" + N + END,
              (m, parts) -> parts.pot(PotSize.square(n(m, 1)))),
          SizeRule.exact(START + "G\\s?" + N + END, (m, parts) -> godet(m.group(), n(m, 1), parts)),
          SizeRule.of(
              START + "p[\\s-]?" + N + "s?" + END, (m, parts) -> potP(m.group(), n(m, 1), parts)),
          SizeRule.of(
              START
                  + "(?:plugs?|cell(?:s|\\s*grown)?|(?:plug\\s*)?trays?\\s*\\d*|QP\\s*\\d*"
                  + "|alv(?:[eé]olos?|[eé]oles?)?\\.?\\s*\\d+)"
                  + END,
              (m, parts) -> parts.pot(PotSize.plug())));

  private PotRules() {}

  /** T 7,5 is a Topf of litres; T337 is a rootstock. */
  private static void topf(String written, double litres, SizeParts parts) {
    if (litres > LARGEST_TOPF) {
      parts.note(written);
    } else {
      parts.pot(PotSize.ofLitres(litres));
    }
  }

  /** No box is so long: 200x100x40 is a piece of hedge, its height first. Common practice. */
  private static void boxOrHedge(
      String written, double one, double other, double third, SizeParts parts) {
    if (Math.max(one, Math.max(other, third)) > LONGEST_BOX_CM) {
      parts.height(Span.of(one, one));
      parts.note(written);
    } else {
      parts.pot(PotSize.box(one, other, third));
    }
  }

  /** G7 and G9 are godets of so many cm; nothing narrower is one. */
  private static void godet(String written, double number, SizeParts parts) {
    if (number < NARROWEST_CM) {
      parts.note(written);
    } else {
      parts.pot(PotSize.square(number));
    }
  }

  private static void potP(String written, double number, SizeParts parts) {
    if (number < NARROWEST_CM) {
      parts.nodOfPot("%s is a pot of litres".formatted(written.strip()));
      parts.pot(PotSize.ofLitres(number));
    } else {
      parts.pot(PotSize.square(number));
    }
  }
}
