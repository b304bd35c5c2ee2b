package growingon.load.own.size;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sizes and pots as the trade writes them: common practice, no source, unless the page says so. */
class SizeGrammarTest {
  static String shown(String text) {
    SizeParts parts = new SizeParts();
    if (SizeGrammar.saysStandard(text)) {
      parts.standard();
    }
    SizeGrammar.readSize(text, parts);
    parts.settle();
    StringBuilder said = new StringBuilder();
    parts.pot().ifPresent(pot -> said.append(" pot ").append(pot.name()));
    parts.trunkMm().ifPresent(mm -> said.append(" trunk ").append(SizeParts.shown(mm)));
    parts.girthCm().ifPresent(cm -> said.append(" girth ").append(SizeParts.shown(cm)));
    parts.heightCm().ifPresent(cm -> said.append(" height ").append(SizeParts.shown(cm)));
    parts.years().ifPresent(years -> said.append(" age ").append(years));
    parts.form().ifPresent(form -> said.append(" ").append(form));
    said.append(parts.asks().isEmpty() ? "" : " ask");
    said.append(parts.nods().isEmpty() ? "" : " nod");
    return said.toString().strip();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '^',
      value = {
        "2L|pot 2 litre",
        "7.5 litre|pot 7.5 litre",
        "3 ltr|pot 3 litre",
        "C3|pot 3 litre",
        "Co 7,5|pot 7.5 litre",
        "25 ltr|pot 25 litre",
        "P9|pot P9",
        "P11|pot P11",
        "9 cm pot|pot P9",
        "35x25x8|pot box 35x25x8",
        "plug|pot plug",
        "tray 84|pot plug",
        "6\" pot|pot 15 cm pot",
        "#5|pot 16.6 litre",
        "8-10|girth 8-10 nod",
        "8-10 std|girth 8-10",
        "10/12 Hst|girth 10-12",
        "C10 8-10|pot 10 litre ask",
        "C35 12-14|pot 35 litre girth 12-14 nod",
        "60-80|height 60-80",
        "40/60|height 40-60",
        "60-80cm|height 60-80",
        "1.2 m|height 120",
        "1.0-1.25|height 100-125",
        "90x70|height 90",
        "25-30|ask",
        "C3 25-30|pot 3 litre height 25-30",
        "60-80 C3|pot 3 litre height 60-80",
        "7.5 litre 30mm|pot 7.5 litre trunk 30",
        "10 ltr 25-30mm|pot 10 litre trunk 25-30",
        "10L 40 mm|pot 10 litre trunk 40",
        "20 L, trunk 45mm|pot 20 litre trunk 45",
        "2.5 cm trunk|trunk 25",
        "Ø 25 mm|trunk 25",
        "1 1/2\"|trunk 38.1",
        "2½\"|trunk 63.5",
        "12-18\"|height 30.48-45.72",
        "Lt 70|pot 70 litre",
        "T337|",
        "frame 1.2 x 1.2|",
        "1.2 x 1.2|height 120",
        "3 ft stem|",
        "girth 48|girth 48",
        "3 stems 2-3 cm|trunk 20-30",
        "20/25 trunk|girth 20-25 nod",
        "1+1|age 2 seedling",
        "1u1|age 2 seedling",
        "0/1|age 1 cutting",
        "2-0 bare root|age 2 bare root",
        "3xv mB 12-14|girth 12-14 root ball nod",
        "3xv|",
        "2x 60-100|height 60-100",
        "3-4 ft|height 91.44-121.92",
        "60 stem|",
        "StH 150|",
        "clear stem 2.0|",
        "45 dia|",
        "Ø 60|",
        "hd 35/40|",
        "10L / 15L|ask",
        "bare root|bare root",
        "Sol 14-16 3xv mDb|girth 14-16 root ball nod",
        "150+|height 150"
      })
  void size_asTheTradeWritesIt_isRead(String text, String expected) {
    assertThat(shown(text)).as(text).isEqualTo(expected == null ? "" : expected);
  }
}
