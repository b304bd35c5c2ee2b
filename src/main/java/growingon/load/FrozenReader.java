package growingon.load;

import growingon.load.cell.Cell;
import growingon.load.cell.Cell.Field;
import growingon.load.cell.Cell.Fields;
import growingon.load.cell.Cell.Items;
import growingon.load.cell.CellFault;
import growingon.load.cell.Findings;
import growingon.load.source.JsonFile;
import growingon.load.source.JsonShape;
import growingon.problem.Loaded;
import growingon.problem.Where;
import growingon.problem.advice.KeptPlanAdvice;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads back a record that was frozen in a JSON file: an object whose keys are the words of its
 * components' names. Components are texts, numbers (null for none that can be written), yes or no,
 * records, and lists and maps of these. Every key must be there and none besides.
 */
public final class FrozenReader {
  private final Where file;

  private FrozenReader(Where file) {
    this.file = file;
  }

  /**
   * Reads a record.
   *
   * @param file a file as it was frozen
   * @param shape the record's class
   * @return the record, or what is wrong with the file
   */
  public static <T extends Record> Loaded<T> read(Path file, Class<T> shape) {
    Findings findings = new Findings();
    Optional<T> value =
        JsonFile.read(file, shape, findings).flatMap(fields -> read(file, fields, shape, findings));
    return value
        .map(found -> Loaded.of(found, findings.problems()))
        .orElseGet(() -> Loaded.failed(findings.problems()));
  }

  private static <T extends Record> Optional<T> read(
      Path file, Fields fields, Class<T> shape, Findings findings) {
    Where where = Where.file(file.getFileName().toString());
    try {
      return Optional.of(shape.cast(new FrozenReader(where).made(fields, shape)));
    } catch (CellFault fault) {
      findings.add(fault.at(where));
      return Optional.empty();
    }
  }

  private Object made(Fields fields, Class<?> shape) {
    RecordComponent[] components = shape.getRecordComponents();
    Object[] values = new Object[components.length];
    for (int i = 0; i < components.length; i++) {
      String key = JsonShape.words(components[i].getName());
      Field field = fields.fields().get(key);
      if (field == null && components[i].getType() == Optional.class) {
        values[i] = Optional.empty();
        continue;
      }
      if (field == null) {
        throw new CellFault(where -> KeptPlanAdvice.frozenLacks(at(fields.line()), key));
      }
      values[i] = value(field.value(), components[i].getGenericType(), at(field.line()), key);
    }
    return made(shape, components, values, at(fields.line()));
  }

  private static Object made(
      Class<?> shape, RecordComponent[] components, Object[] values, Where where) {
    Class<?>[] types =
        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
    try {
      Constructor<?> constructor = shape.getDeclaredConstructor(types);
      constructor.setAccessible(true);
      return constructor.newInstance(values);
    } catch (InvocationTargetException refused) {
      throw new CellFault(
          none -> KeptPlanAdvice.frozenWrong(where, refused.getCause().getMessage()));
    } catch (ReflectiveOperationException impossible) {
      throw new IllegalStateException("a record has its own constructor", impossible);
    }
  }

  private Where at(int line) {
    return new Where(file.file(), "", line, "");
  }

  private Object value(Cell cell, Type type, Where where, String key) {
    if (type instanceof ParameterizedType of && of.getRawType() == Optional.class) {
      return Optional.of(value(cell, of.getActualTypeArguments()[0], where, key));
    }
    if (type instanceof ParameterizedType of && cell instanceof Items items) {
      return list(items, of.getActualTypeArguments()[0], where, key);
    }
    if (type instanceof ParameterizedType of && cell instanceof Fields fields) {
      return map(fields, of.getActualTypeArguments()[1], where, key);
    }
    if (type instanceof Class<?> shape && shape.isRecord() && cell instanceof Fields fields) {
      return made(fields, shape);
    }
    return plain(cell, type)
        .orElseThrow(
            () ->
                new CellFault(none -> KeptPlanAdvice.frozenWrong(where.column(key), cell.shown())));
  }

  private List<Object> list(Items items, Type item, Where where, String key) {
    List<Object> values = new ArrayList<>(items.items().size());
    for (Cell each : items.items()) {
      values.add(value(each, item, where, key));
    }
    return values;
  }

  private Map<String, Object> map(Fields fields, Type entry, Where where, String key) {
    Map<String, Object> values = new LinkedHashMap<>();
    fields
        .fields()
        .forEach((name, field) -> values.put(name, value(field.value(), entry, where, key)));
    return values;
  }

  private static Optional<Object> plain(Cell cell, Type type) {
    boolean isDouble = type == double.class || type == Double.class;
    if (cell instanceof Cell.Number number) {
      return isDouble ? Optional.of(number.value()) : whole(number.value(), type);
    }
    if (cell instanceof Cell.Flag flag && type == boolean.class) {
      return Optional.of(flag.value());
    }
    if (type == String.class && (cell instanceof Cell.Text || cell.isEmpty())) {
      return Optional.of(cell.shown());
    }
    return isDouble && cell.isEmpty() ? Optional.of(Double.NaN) : Optional.empty();
  }

  private static Optional<Object> whole(double value, Type type) {
    if (value != Math.rint(value)) {
      return Optional.empty();
    }
    if (type == int.class && Math.abs(value) <= Integer.MAX_VALUE) {
      return Optional.of((int) value);
    }
    return type == long.class ? Optional.of((long) value) : Optional.empty();
  }
}
