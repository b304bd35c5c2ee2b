package growingon.load.own.size;

import static growingon.load.own.size.SizeRule.END;
import static growingon.load.own.size.SizeRule.START;

import java.util.List;

/** How the trade writes that a tree is a standard, and how its roots are. */
final class RootRules {
  /** Hochstamm, hoogstam, not before a height: H 3xv 12-14. */
  static final List<SizeRule> STANDARDS =
      List.of(
          SizeRule.exact(
              START + "H(?![\\p{L}.]|\\s*:?\\s*\\d)",
              (m, parts) -> {
                parts.standard();
                parts.note(m.group());
              }));

  static final List<SizeRule> ROOTS =
      List.of(
          SizeRule.of(
              START
                  + "(?:bare\\s*-?root(?:ed|s)?|racines?\\s*nues?|blote\\s*wortel|radice\\s*nuda|ra(?:í|i)z\\s*desnuda|r\\.\\s?d\\.?|wurzelnackt|ohne\\s*ballen|naaktwortel(?:ig)?)"
                  + END,
              (m, parts) -> parts.form("bare root")),
          SizeRule.exact("(?<=\\d\\s{1,2})br" + END, (m, parts) -> parts.form("bare root")),
          SizeRule.exact("(?<=\\d\\s{1,2})rb" + END, (m, parts) -> parts.form("root ball")),
          SizeRule.exact(
              START + "(?:BR|B/R|oB|o\\.B\\.|ob|OB|RN|r\\.n\\.|wn)" + END,
              (m, parts) -> parts.form("bare root")),
          SizeRule.of(
              START
                  + "(?:root\\s*-?ball(?:ed|s)?|ballen|mit\\s*ballen|drahtballen|mottes?|en\\s*motte|(?:met\\s*)?(?:draad)?kluit(?:en)?|(?:con\\s*)?zolla|(?:con\\s*)?cepell(?:ó|o)n|cep\\.|b\\s?&\\s?b|balled)"
                  + END,
              (m, parts) -> parts.form("root ball")),
          SizeRule.exact(
              START + "(?:RB|WRB|mB|m\\.B\\.|mDb|mDB|m\\.Db\\.|MB|MDB|mb|mdb|MG|DK)" + END,
              (m, parts) -> parts.form("root ball")));

  private RootRules() {}
}
