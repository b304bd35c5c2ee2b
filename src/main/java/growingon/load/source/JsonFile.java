package growingon.load.source;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import growingon.load.cell.Cell;
import growingon.load.cell.Cell.Field;
import growingon.load.cell.Cell.Fields;
import growingon.load.cell.Findings;
import growingon.load.cell.Utf8;
import growingon.problem.Where;
import growingon.problem.advice.SettingsAdvice;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A JSON file with the line of every key. Comments and trailing commas are allowed; a key that
 * comes twice or that its shape does not know is an error.
 */
public final class JsonFile {
  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .enable(JsonReadFeature.ALLOW_JAVA_COMMENTS)
          .enable(JsonReadFeature.ALLOW_TRAILING_COMMA)
          .enable(StreamReadFeature.USE_FAST_DOUBLE_PARSER)
          .build();

  private final Where where;
  private final Findings findings;
  private boolean broken;

  private JsonFile(Where where, Findings findings) {
    this.where = where;
    this.findings = findings;
  }

  /** The object that a file holds; empty if it cannot be used, which is reported. */
  public static Optional<Fields> read(Path file, Class<? extends Record> shape, Findings findings) {
    Where where = Where.file(file.getFileName().toString());
    return Utf8.read(file, where, findings)
        .flatMap(text -> new JsonFile(where, findings).parse(text, shape));
  }

  private Optional<Fields> parse(String text, Class<? extends Record> shape) {
    try (JsonParser parser = FACTORY.createParser(text)) {
      parser.nextToken();
      Cell value = value(parser);
      if (parser.nextToken() != null) {
        report(SettingsAdvice.moreAfterJson(at(parser.currentLocation().getLineNr())));
      }
      if (!(value instanceof Fields fields)) {
        report(SettingsAdvice.noJsonObject(where));
        return Optional.empty();
      }
      broken |= !new JsonShape(where, findings).check(fields, shape);
      return broken ? Optional.empty() : Optional.of(fields);
    } catch (JsonProcessingException fault) {
      int line = fault.getLocation() == null ? 0 : fault.getLocation().getLineNr();
      report(SettingsAdvice.brokenJson(at(line), fault.getOriginalMessage()));
      return Optional.empty();
    } catch (IOException impossible) {
      throw new UncheckedIOException("reading from memory failed", impossible);
    }
  }

  private void report(growingon.problem.Problem problem) {
    findings.add(problem);
    broken = true;
  }

  private Where at(int line) {
    return new Where(where.file(), "", line, "");
  }

  private Cell value(JsonParser parser) throws IOException {
    JsonToken token = parser.currentToken();
    if (token == null) {
      return Cell.EMPTY;
    }
    return switch (token) {
      case START_OBJECT -> object(parser);
      case START_ARRAY -> array(parser);
      case VALUE_STRING -> Cell.ofText(parser.getText());
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(parser);
      case VALUE_TRUE -> new Cell.Flag(true);
      case VALUE_FALSE -> new Cell.Flag(false);
      default -> Cell.EMPTY;
    };
  }

  private Cell number(JsonParser parser) throws IOException {
    double value = parser.getDoubleValue();
    if (!Double.isFinite(value)) {
      int line = parser.currentTokenLocation().getLineNr();
      report(SettingsAdvice.numberTooLarge(at(line), parser.getText()));
      return Cell.EMPTY;
    }
    return new Cell.Number(value, false);
  }

  private Fields object(JsonParser parser) throws IOException {
    int begin = parser.currentTokenLocation().getLineNr();
    Map<String, Field> fields = new LinkedHashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String key = parser.currentName();
      int line = parser.currentTokenLocation().getLineNr();
      parser.nextToken();
      if (fields.containsKey(key)) {
        report(SettingsAdvice.keyTwice(at(line), key, fields.get(key).line()));
        value(parser);
      } else {
        fields.put(key, new Field(value(parser), line));
      }
    }
    return new Fields(fields, begin);
  }

  private Cell array(JsonParser parser) throws IOException {
    List<Cell> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      items.add(value(parser));
    }
    return new Cell.Items(items);
  }
}
