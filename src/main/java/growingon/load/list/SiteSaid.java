package growingon.load.list;

import growingon.load.cell.Currency;
import growingon.load.cell.Texts;
import growingon.load.file.AnswersGiven;
import growingon.load.file.NurseryFiles;
import growingon.load.own.lot.Site;
import growingon.load.settings.SettingsReader;
import growingon.load.table.NurseryShape;
import growingon.nursery.number.Writing;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a nursery's settings say of its site, before they are read: its list must be read by them.
 * What is wrong with them is told when they are.
 *
 * @param settings each as it is written, by the key of its heading
 */
public record SiteSaid(Map<String, String> settings) {
  /** Nothing is said of it. */
  public static final SiteSaid NOTHING = new SiteSaid(Map.of());

  public SiteSaid {
    settings = Map.copyOf(settings);
  }

  public static SiteSaid of(NurseryFiles files) {
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
    return new SiteSaid(said);
  }

  /** The site as far as a list is read by it. */
  public Site site() {
    boolean south =
        Texts.key(settings.getOrDefault(NurseryShape.HEMISPHERE, "")).startsWith("south");
    OptionalDouble factor = number(settings.getOrDefault(NurseryShape.GIRTH_FACTOR, ""));
    return new Site(factor.orElse(Site.USUAL.girthBaseFactor()), south);
  }

  /** How numbers and months are written. */
  Writing writing() {
    Writing usual = Writing.USUAL;
    return new Writing(
        said(NurseryShape.NUMBER_STYLE, Writing.Digits.values()).orElse(usual.digits()),
        said(NurseryShape.DATE_STYLE, Writing.Days.values()).orElse(usual.days()),
        usual.sign());
  }

  private <T> Optional<T> said(String setting, T[] values) {
    String text = Texts.key(settings.getOrDefault(Texts.headingKey(setting), ""));
    return Arrays.stream(values)
        .filter(value -> Texts.key(value.toString()).equals(text))
        .findFirst();
  }

  /** The code of the nursery's currency, if one is said. */
  Optional<String> currency() {
    return Optional.ofNullable(settings.get(NurseryShape.CURRENCY)).flatMap(Currency::code);
  }

  /** Whether an exchange rate of a currency is said. */
  boolean exchanges(String code) {
    return !settings
        .getOrDefault(Texts.headingKey(SettingsReader.RATE_PREFIX + code), "")
        .isBlank();
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
