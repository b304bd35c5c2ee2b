package growingon.load.own.heading;

import growingon.load.own.text.Units;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The columns that a list may have: those of the stock table, and what a list says in its own way.
 */
final class OwnColumns {
  private static final Map<String, String> ALL = all0();

  private OwnColumns() {}

  private static Map<String, String> all0() {
    Map<String, String> all = new LinkedHashMap<>();
    for (String name :
        "lot;species;form;arrived;counted;sorted;pot;potted;root work;place;route;last step;training since;hold to grade;not before;apart months;supplier;passport;origin;from lot;note;genus;cultivar;common name;rootstock;size;place detail;count unit;clear stem;on order;age;habit;quality word;not read;plants per m2;plant a row"
            .split(";")) {
      all.put(name, "");
    }
    for (String name :
        "quantity;second count;kept;reserved;sold;lost;per pack;packs;least;multiple;number of firsts;number of seconds"
            .split(";")) {
      all.put(name, "count");
    }
    for (String name : "unit cost;row cost;selling price".split(";")) {
      all.put(name, Units.MONEY);
    }
    for (String name : "trunk spread %;first %;second %;hold share %".split(";")) {
      all.put(name, "%");
    }
    for (String name :
        "trunk mm;trunk from mm;trunk to mm;gap mm;crown mm;height left mm".split(";")) {
      all.put(name, "mm");
    }
    for (String name : "girth cm;girth from cm;girth to cm;height cm;spacing cm".split(";")) {
      all.put(name, "cm");
    }
    return all;
  }

  /** Each with its unit. */
  static Map<String, String> all() {
    return ALL;
  }

  static boolean has(String name) {
    return ALL.containsKey(name);
  }
}
