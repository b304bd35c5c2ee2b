package growingon.load;

import growingon.load.cell.Texts;
import growingon.load.own.Site;
import growingon.load.settings.SettingsReader;
import growingon.load.table.NurseryShape;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What a nursery's settings say of its site, before they are read: its list must be read by them.
 * What is wrong with them is told when they are.
 */
final class SiteSaid {
  private SiteSaid() {}

  static Site of(NurseryFiles files) {
    Map<String, String> said = new LinkedHashMap<>();
    files
        .settings()
        .ifPresent(
            json ->
                json.fields()
                    .fields()
                    .forEach(
                        (name, field) -> said.put(Texts.headingKey(name), field.value().shown())));
    files
        .tables()
        .find(SettingsReader.FORMAT)
        .ifPresent(
            table ->
                table
                    .rows()
                    .forEach(
                        row ->
                            said.put(
                                Texts.headingKey(row.cell("name").shown()),
                                row.cell("value").shown())));
    AnswersGiven.of(files.tables()).stream()
        .filter(answer -> answer.table().equals(SettingsReader.FORMAT.name()))
        .forEach(answer -> said.put(Texts.headingKey(answer.row()), answer.cell().shown()));
    boolean south = Texts.key(said.getOrDefault(NurseryShape.HEMISPHERE, "")).startsWith("south");
    OptionalDouble factor = number(said.getOrDefault(NurseryShape.GIRTH_FACTOR, ""));
    return new Site(factor.orElse(Site.USUAL.girthBaseFactor()), south);
  }

  private static OptionalDouble number(String text) {
    try {
      double value = Double.parseDouble(text.strip().replace(',', '.'));
      return value > 0 && value <= 10 ? OptionalDouble.of(value) : OptionalDouble.empty();
    } catch (NumberFormatException noNumber) {
      return OptionalDouble.empty();
    }
  }
}
