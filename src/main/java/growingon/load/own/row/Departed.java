package growingon.load.own.row;

import growingon.load.own.text.Keys;
import growingon.load.own.text.MonthText;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Whether a remark on a row says that its plants are sold, ordered only, dead or taken away: all of
 * them where it begins with that, some of them where it says so further on or with a number.
 */
enum Departed {
  ALL,
  SOME,
  NONE;

  private static final String SOLD =
      "sold|verkauft|verk|verkocht|vendue?s?|vendut[oaie]|vendid[oa]s?|ausverkauft|uitverkocht|"
          + "epuisee?s?|esaurit[oaie]|agotad[oa]s?|abgeholt|opgehaald|enlevee?s?";
  private static final String AWAITED =
      "in arrivo|(?:still )?to come|not (?:yet )?(?:here|arrived|received|delivered)|"
          + "(?:noch )?nicht (?:da|geliefert|eingetroffen)|pas encore (?:recue?s?|arrivee?s?|livree?s?)|"
          + "nog niet (?:binnen|geleverd|ontvangen)|non ancora arrivat[oaie]|sin recibir|por llegar";
  private static final String ORDERED =
      "on order|ordered|bestellt|besteld|en commande|commandee?s?|ordinat[oaie]|pedid[oa]s?|"
          + AWAITED;
  private static final String LOST =
      "died|gone|scrapped|binned|burnt|dried up|stolen|dug"
          + " up|grubbed|eingegangen|abgestorben|vertrocknet|erfroren|gerodet|gestohlen|doodgegaan|afgestorven|verdroogd|bevroren|gerooid|gestolen|crevee?s?|geles|gelees?|arrachee?s?|volees?|tous"
          + " morts|toutes mortes|mort[oi]"
          + " tutt[oi]|seccat[oaie]|gelat[oaie]|espiantat[oaie]|rubat[oaie]|se"
          + " (?:seco|secaron|murio|murieron|helaron)|arrancad[oa]s?|robad[oa]s?";
  private static final String DEAD = "(?:all )?dead|dood|tot|morte?s?|mort[oi]|muert[oa]s?";
  private static final Pattern ALL_DEAD =
      Pattern.compile(
          "(?:"
              + DEAD
              + ")(?: (?:in|im|en|since|seit|depuis|sinds|dal|desde|this|last|dies\\p{L}*|letzt\\p{L}*|cet|cette|dit|deze|vorig\\p{L}*|quest\\p{L}*|est[ea]) .*)?");
  private static final Pattern DEAD_IN = Pattern.compile("(?:" + DEAD + ") (\\p{L}{3,}).*");

  /** They stand in another list, or are not to be counted in this one. */
  private static final Pattern ELSEWHERE =
      Pattern.compile(
          "(?:moved|umgestellt|umgesetzt|deplacee?s?|verplaatst|spostat[oaie]|trasladad[oa]s?)"
              + " .*\\b(?:list|liste|lijst|lista|elenco|sheet|blatt|blad|foglio|hoja)\\b.*|(?:.*"
              + " )?(?:don't count|do not count|not to be counted|nicht (?:mit)?zahlen|ne pas"
              + " compter|niet (?:mee)?tellen|non contare|no contar)(?: .*)?");

  private static final Pattern NOT_YET =
      Pattern.compile(" (?:" + AWAITED + "|comes|komt|kommt|arrive en|arriva a|llega en) ");
  private static final Pattern ORDER = Pattern.compile("(?:" + ORDERED + ")(?: .*)?");
  private static final String ANY = "(?:" + SOLD + "|" + ORDERED + "|" + LOST + ")";
  private static final Pattern BEGINS =
      Pattern.compile("(?:all|alle|tous|toutes|tutti|todos|allemaal)? ?" + ANY + "(?: (.*))?");
  private static final Pattern HOLDS = Pattern.compile("(?:.* )" + ANY + "(?: .*)?");

  /** What follows is a number of plants, and no day, week or year. */
  private static final Pattern FEW =
      Pattern.compile(
          "(?:sind |zijn |sont |of which |davon |dont )?(?!(?:19|20)[0-9]{2})[0-9]{1,4}(?:"
              + " (?:st|stk|stuck|stuks|pcs|plants?|trees?|ex|pz|uds?|pieces?|baume|bomen))?(?:"
              + " (?:to|an|aan|a|al|alla|chez|bei|by)(?: .*)?)?");

  /** It is sold at some time or in some way, and not sold already. */
  private static final Pattern MANNER =
      Pattern.compile(
          "(?:as|by the|only|from|next|later|if|ab|nur|erst|sich|wenn|par|a"
              + " partir|seulement|solo|soltanto|vanaf|pas(?! encore)|alleen|desde) .*");

  /**
   * Whether it says that they are ordered and not that they are awaited, which says nothing of
   * those that have come.
   */
  static boolean isOrder(String remark) {
    String key = Keys.of(remark);
    return ORDER.matcher(key).matches() && !NOT_YET.matcher(" " + key + " ").find();
  }

  /** What a remark says of its row. */
  static Departed of(String remark) {
    String key = Keys.of(remark);
    Matcher dead = DEAD_IN.matcher(key);
    boolean deadSince = dead.matches() && MonthText.named(dead.group(1)).isPresent();
    if (ALL_DEAD.matcher(key).matches() || deadSince || ELSEWHERE.matcher(key).matches()) {
      return ALL;
    }
    Matcher begins = BEGINS.matcher(key);
    if (!begins.matches()) {
      return HOLDS.matcher(key).matches() ? SOME : NONE;
    }
    String rest = begins.group(1) == null ? "" : begins.group(1);
    return FEW.matcher(rest).matches() || MANNER.matcher(rest).matches() ? SOME : ALL;
  }
}
