package growingon.report.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class UnitsTest {
  private static Units of(Column... columns) {
    return Units.of(new Table("t", "", List.of(), List.of(columns), List.of()));
  }

  private static final Column COST = Column.of("cost", "cost", "GBP", Kind.MONEY);
  private static final Column PRICE = Column.of("price", "price", "GBP", Kind.MONEY_EACH);
  private static final Column NEEDED = Column.of("needed", "needed", "m²", Kind.SQUARE_METRES);
  private static final Column FIRSTS = Column.of("firsts", "firsts", "in 100", Kind.NUMBER);
  private static final Column USABLE = Column.of("usable", "usable", "in 100", Kind.NUMBER);

  @Test
  void unit_ofSeveralColumns_isSaidOnceAndNotInTheHeadings() {
    Units units = of(COST, PRICE, NEEDED, FIRSTS, USABLE);

    assertThat(units.line()).contains("Amounts in GBP, numbers in 100.");
    assertThat(units.heading(COST)).isEqualTo("cost");
    assertThat(units.heading(NEEDED)).isEqualTo("needed, m²");
  }

  @Test
  void unit_ofOneColumn_staysInItsHeading() {
    Units units = of(COST, NEEDED);

    assertThat(units.line()).isEmpty();
    assertThat(units.heading(COST)).isEqualTo("cost, GBP");
  }

  @Test
  void unit_thatTheHeadingNames_isNotSaidTwice() {
    Column shortOf = Column.of("hours_short", "hours short", "hours", Kind.HOURS);

    assertThat(of(shortOf, NEEDED).heading(shortOf)).isEqualTo("hours short");
  }
}
