package growingon.load.table.market;

import growingon.load.cell.Findings;
import growingon.load.cell.Range;
import growingon.load.row.As;
import growingon.load.row.Heading;
import growingon.load.row.Row;
import growingon.load.row.Rows;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.nursery.market.Quality;
import growingon.nursery.market.QualityRule;
import growingon.problem.advice.ValueAdvice;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * What each quality fetches.
 *
 * <pre>
 * quality    first, second or third
 * price %    of the list price [100, 60, 20]; 0 if it is not sold
 * potted     whether it is potted; if not it is culled when the lot is sorted [yes, yes, no]
 * </pre>
 *
 * A quality without a row has the defaults.
 */
public final class QualitiesTable {
  private static final Heading<Quality> QUALITY =
      Heading.text("quality", As.word(Quality.class))
          .choice("quality")
          .means("first, second or third");
  private static final Heading<Double> PRICE =
      Heading.number("price %", As.percent(Range.of(0, 1000)))
          .ifEmpty("100, 60 and 20")
          .means("What it fetches in 100 of the list price");
  private static final Heading<Boolean> POTTED =
      Heading.yesNo("potted")
          .ifEmpty("yes, yes and no")
          .means("Whether it is potted; if not it is thrown out when the lot is sorted");
  public static final TableFormat FORMAT =
      TableFormat.of("qualities", QUALITY.needed(), PRICE, POTTED);

  private static final Map<Quality, QualityRule> SHIPPED =
      Map.of(
          Quality.FIRST, new QualityRule(1, true),
          Quality.SECOND, new QualityRule(0.6, true),
          Quality.THIRD, new QualityRule(0.2, false));

  private QualitiesTable() {}

  public static Map<Quality, QualityRule> read(Optional<Table> table, Findings findings) {
    Map<Quality, QualityRule> rules = new EnumMap<>(Quality.class);
    table.ifPresent(found -> found.rows().forEach(row -> add(row, rules)));
    for (Quality quality : Quality.values()) {
      if (!rules.containsKey(quality)) {
        rules.put(quality, rule(quality, Rows.none(FORMAT.name(), quality.toString(), findings)));
      }
    }
    return rules;
  }

  private static void add(Row row, Map<Quality, QualityRule> rules) {
    Quality quality = row.get(QUALITY);
    if (row.isFailed()) {
      return;
    }
    if (rules.containsKey(quality)) {
      row.fail(
          QUALITY, where -> ValueAdvice.defined(where, quality.toString(), quality.toString()));
    }
    QualityRule rule = rule(quality, row);
    row.accept(() -> rule).ifPresent(made -> rules.put(quality, made));
  }

  private static QualityRule rule(Quality quality, Row row) {
    QualityRule shipped = SHIPPED.get(quality);
    return new QualityRule(row.get(PRICE, shipped.priceShare()), row.get(POTTED, shipped.potted()));
  }
}
