package growingon.load.source;

import growingon.load.cell.Cell;
import growingon.load.cell.Cell.Field;
import growingon.load.cell.Cell.Fields;
import growingon.load.cell.Findings;
import growingon.load.cell.Nearest;
import growingon.load.cell.NumberStyle;
import growingon.load.row.MissingColumns;
import growingon.load.row.Row;
import growingon.problem.Where;
import growingon.problem.advice.SettingsAdvice;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Compares a JSON object with the keys that a shape knows: a record of {@link Key}s, or one whose
 * keys are the words of its components' names.
 */
public final class JsonShape {
  /** The heading above the values of a table of settings. */
  public static final String VALUE = "value";

  private static final Pattern CAPITAL = Pattern.compile("(\\p{Lu})");

  private final Where where;
  private final Findings findings;
  private boolean fine = true;

  JsonShape(Where where, Findings findings) {
    this.where = where;
    this.findings = findings;
  }

  /** The keys of a shape with the types of their values. */
  public static Map<String, Type> keys(Class<?> shape) {
    Map<String, Type> keys = new LinkedHashMap<>();
    for (RecordComponent component : shape.getRecordComponents()) {
      keys.put(nameOf(shape, component), component.getGenericType());
    }
    return keys;
  }

  private static String nameOf(Class<?> shape, RecordComponent component) {
    Key key = keyOf(shape, component);
    return key == null ? words(component.getName()) : key.value();
  }

  /** The key of a component without a {@link Key}: {@code firstMonth} is "first month". */
  public static String words(String component) {
    return CAPITAL.matcher(component).replaceAll(" $1").toLowerCase(Locale.ROOT);
  }

  /** What a key of a shape is, with its unit and default. */
  public static String says(Class<?> shape, String key) {
    return Arrays.stream(shape.getRecordComponents())
        .map(component -> keyOf(shape, component))
        .filter(each -> each.value().equals(key))
        .map(Key::says)
        .findFirst()
        .orElseThrow();
  }

  private static Key keyOf(Class<?> shape, RecordComponent component) {
    try {
      return shape.getDeclaredField(component.getName()).getAnnotation(Key.class);
    } catch (NoSuchFieldException impossible) {
      throw new IllegalStateException("a record has a field for each component", impossible);
    }
  }

  /** Reports every unknown key and every value of a wrong sort; whether there was none. */
  boolean check(Fields fields, Class<?> shape) {
    checkRecord(fields, shape);
    return fine;
  }

  private void checkRecord(Fields fields, Class<?> shape) {
    Map<String, Type> keys = keys(shape);
    fields
        .fields()
        .forEach(
            (key, field) -> {
              Type type = keys.get(key);
              if (type == null) {
                report(
                    SettingsAdvice.unknownKey(
                        at(field),
                        key,
                        Nearest.to(key, keys.keySet()),
                        List.copyOf(keys.keySet())));
              } else {
                checkValue(key, field, type);
              }
            });
  }

  private void checkValue(String key, Field field, Type given) {
    Type type = present(given);
    Cell value = field.value();
    boolean map = type instanceof ParameterizedType of && of.getRawType() == Map.class;
    boolean list = type instanceof ParameterizedType of && of.getRawType() == List.class;
    boolean record = type instanceof Class<?> of && of.isRecord();
    if (value.isEmpty()) {
      return;
    }
    if (type == NumberOrByName.class && value instanceof Fields byName) {
      byName.fields().forEach((name, each) -> checkValue(name, each, Double.class));
      return;
    }
    if ((map || record) != value instanceof Fields || list != value instanceof Cell.Items) {
      report(
          SettingsAdvice.wrongJsonSort(
              at(field).column(key), value.shown(), sort(map || record, list)));
    } else if (map) {
      Type entry = ((ParameterizedType) type).getActualTypeArguments()[1];
      ((Fields) value).fields().forEach((name, each) -> checkValue(name, each, entry));
    } else if (record) {
      checkRecord((Fields) value, (Class<?>) type);
    } else if (list) {
      checkItems(key, (Cell.Items) value, field, type);
    }
  }

  /** What may be left out is of a shape where it is there. */
  private static Type present(Type type) {
    return type instanceof ParameterizedType of && of.getRawType() == Optional.class
        ? of.getActualTypeArguments()[0]
        : type;
  }

  /** Plain values of a list are looked at when they are read. */
  private void checkItems(String key, Cell.Items list, Field field, Type type) {
    Type item = ((ParameterizedType) type).getActualTypeArguments()[0];
    if (!(item instanceof Class<?> of) || of.isRecord()) {
      list.items().forEach(each -> checkValue(key, new Field(each, field.line()), item));
    }
  }

  private static String sort(boolean object, boolean list) {
    if (object) {
      return "an object in braces { }";
    }
    return list ? "a list in brackets [ ]" : "a single value";
  }

  private Where at(Field field) {
    return new Where(where.file(), "", field.line(), "");
  }

  private void report(growingon.problem.Problem problem) {
    findings.add(problem);
    fine = false;
  }

  /**
   * The values of an object as a row of the file.
   *
   * @param table what the values count as among the assumptions
   */
  public static Row row(
      String table, Fields fields, String subject, Where file, Findings findings) {
    return row(table, fields, subject, file, NumberStyle.POINT, findings);
  }

  /** The same where the object was gathered from a sheet, in whose second column values stand. */
  public static Row row(
      String table,
      Fields fields,
      String subject,
      Where file,
      NumberStyle style,
      Findings findings) {
    Map<String, Cell> cells = new LinkedHashMap<>();
    Map<String, Where> places = new LinkedHashMap<>();
    boolean json = file.file().endsWith(".json");
    fields
        .fields()
        .forEach(
            (key, field) -> {
              cells.put(key, field.value());
              places.put(
                  key, new Where(file.file(), file.sheet(), field.line(), json ? key : VALUE));
            });
    Where begin = new Where(file.file(), file.sheet(), fields.line(), "");
    return new Row(
        table,
        List.of(),
        () -> subject,
        begin,
        style,
        cells,
        places,
        MissingColumns.NONE,
        findings);
  }
}
