package growingon.command;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Changes files as slips, broken programs and mischief do; the same from the same random. */
final class Mutation {
  /** What people and programs put into cells, and what breaks readers. */
  private static final List<String> VALUES =
      List.of(
          "",
          "0",
          "-1",
          "1",
          "0.5",
          "1e9",
          "1e308",
          "1e-300",
          "-0",
          "1e-7",
          "1e6448825751",
          "99999999999999999999",
          "2147483648",
          "-2147483649",
          "NaN",
          "Infinity",
          "٣",
          "1,200",
          "1.200",
          "1,2",
          "1 000",
          "12-14",
          "8/10 cm",
          "girth 10",
          "3.5 cm",
          "20 %",
          "120 %",
          "yes",
          "no",
          "maybe",
          "2027-03",
          "2027-02-30",
          "Mar 2027",
          "12/11/2026",
          "14/11/26",
          "0/0/0",
          "9999-12",
          "1900-01",
          "31.12.2199",
          "March",
          "13",
          "all",
          "every",
          "*",
          "none",
          "arrival",
          "March year 99",
          "999 months after pot up",
          "every 99 years in March",
          "March once trunk 1e9",
          "every 0 years in May",
          "2.4 m wire; 2.4 m wire",
          "first",
          "bench",
          "steady",
          "EUR",
          "€",
          "USD",
          "🌳",
          "\u0000",
          "\u202Ex",
          "a\nb",
          "\"",
          "'",
          "=1+1",
          "CON",
          "../..",
          "木".repeat(40),
          "x".repeat(300),
          "Rowan",
          "Yew",
          "pot and wire",
          "training pot",
          "Yard",
          "light mix",
          "small trees",
          "100",
          "12",
          "500000000",
          "0.000001",
          "512",
          "10000000",
          "1000000",
          "40");

  /** Numbers, quoted texts and bare words of a file. */
  private static final Pattern TOKEN =
      Pattern.compile("-?[0-9]+(?:\\.[0-9]+)?|\"[^\"\n]*\"|[\\p{L}][\\p{L} ]*");

  private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");
  private static final Pattern VALUE = Pattern.compile("<v>([^<]*)</v>");
  private static final Pattern MONTH = Pattern.compile("[0-9]{4}-[0-9]{2}");
  private static final List<Double> FACTORS =
      List.of(0.0, 1e-6, 0.001, 0.1, 0.5, 1.1, 2.0, 10.0, 100.0, 1e4, 1e6, -1.0);

  private static final List<String> EDGES =
      List.of(
          "0",
          "0.000001",
          "0.00001",
          "0.01",
          "1",
          "2",
          "3",
          "12",
          "16",
          "40",
          "60",
          "100",
          "99.999999",
          "200",
          "300",
          "500",
          "512",
          "1000",
          "1200",
          "10000",
          "1000000",
          "10000000",
          "999999999",
          "1000000000",
          "-1",
          "-99",
          "-1000000000");

  private final Random random;

  Mutation(Random random) {
    this.random = random;
  }

  private <T> T any(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  /** Whether this comes about, once in so many times. */
  boolean once(int in) {
    return random.nextInt(in) == 0;
  }

  /** A number from 0 to below a bound. */
  int number(int below) {
    return random.nextInt(below);
  }

  String value() {
    return any(VALUES);
  }

  /** A file changed in one way, or a few. */
  byte[] file(String name, byte[] bytes) throws IOException {
    byte[] changed = bytes;
    int more = once(3) ? random.nextInt(4) : 0;
    for (int i = 0; i <= more; i++) {
      changed = name.endsWith(".xlsx") ? workbook(changed) : text(name, changed);
    }
    return changed;
  }

  private byte[] text(String name, byte[] bytes) {
    if (once(20)) {
      return bytes(bytes);
    }
    String text = new String(bytes, StandardCharsets.UTF_8);
    String changed = name.endsWith(".csv") && !once(20) ? table(text) : tokens(text);
    return changed.getBytes(StandardCharsets.UTF_8);
  }

  /** A value of the same kind, as likely as not another that can be planned with. */
  private String like(String value) {
    if (once(3)) {
      return value();
    }
    if (NUMBER.matcher(value).matches()) {
      double number = Double.parseDouble(value) * any(FACTORS);
      return any(
          List.of(
              String.valueOf(number),
              String.valueOf(Math.round(number)),
              value + any(List.of("", "5", ".5", " mm", " cm", " %", "-" + value)),
              "0",
              "1"));
    }
    if (MONTH.matcher(value).matches()) {
      return (2020 + random.nextInt(14)) + "-0" + (1 + random.nextInt(9));
    }
    return value.length() < 3 ? value() : slip(value);
  }

  /** A letter left out, doubled or written as a capital. */
  private String slip(String word) {
    int at = random.nextInt(word.length());
    String letter = word.substring(at, at + 1);
    String instead = any(List.of("", letter + letter, letter.toUpperCase(Locale.ROOT)));
    return word.substring(0, at) + instead + word.substring(at + 1);
  }

  /** Bytes flipped, left out, doubled or cut off. */
  byte[] bytes(byte[] bytes) {
    if (bytes.length == 0) {
      return new byte[] {(byte) random.nextInt(256)};
    }
    int at = random.nextInt(bytes.length);
    int length = Math.min(bytes.length - at, 1 + random.nextInt(40));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(bytes, 0, at);
    switch (random.nextInt(5)) {
      case 0 -> out.write(bytes, at + length, bytes.length - at - length);
      case 1 -> {
        out.write(bytes, at, length);
        out.write(bytes, at, bytes.length - at);
      }
      case 2 -> {
        for (int i = 0; i < length; i++) {
          out.write(random.nextInt(256));
        }
        out.write(bytes, at + length, bytes.length - at - length);
      }
      case 3 -> {
        out.write(bytes[at] ^ 1 << random.nextInt(8));
        out.write(bytes, at + 1, bytes.length - at - 1);
      }
      default -> {
        // cut off here
      }
    }
    return out.toByteArray();
  }

  /** One number of a text at the edge of what may stand there. */
  String number(String text) {
    List<MatchResult> found =
        TOKEN
            .matcher(text)
            .results()
            .filter(token -> NUMBER.matcher(token.group()).matches())
            .toList();
    if (found.isEmpty()) {
      return text;
    }
    MatchResult one = any(found);
    return text.substring(0, one.start()) + any(EDGES) + text.substring(one.end());
  }

  /** A number, word or quoted text in the place of another. */
  String tokens(String text) {
    List<MatchResult> found = TOKEN.matcher(text).results().toList();
    if (found.isEmpty()) {
      return value();
    }
    MatchResult token = any(found);
    return text.substring(0, token.start())
        + instead(token.group(), found)
        + text.substring(token.end());
  }

  private String instead(String token, List<MatchResult> others) {
    boolean quoted = token.length() > 1 && token.startsWith("\"");
    return switch (random.nextInt(20)) {
      case 0, 1 -> any(others).group();
      case 2 -> "";
      case 3 -> token + token;
      case 4 -> "[".repeat(1 + random.nextInt(1200));
      default ->
          quoted
              ? '"' + like(token.substring(1, token.length() - 1)).replace("\"", "\\\"") + '"'
              : like(token);
    };
  }

  /** A cell, row or column of a table changed, doubled, moved or left out. */
  private String table(String text) {
    List<List<String>> rows = new ArrayList<>();
    String delimiter = text.indexOf(';') >= 0 && text.indexOf(';') < text.indexOf('\n') ? ";" : ",";
    text.lines().forEach(line -> rows.add(new ArrayList<>(List.of(line.split(delimiter, -1)))));
    if (rows.isEmpty()) {
      return value();
    }
    List<String> row = any(rows);
    int column = random.nextInt(row.size());
    switch (random.nextInt(40)) {
      case 0 -> rows.add(random.nextInt(rows.size()), new ArrayList<>(row));
      case 1 -> rows.remove(row);
      case 2 -> rows.forEach(each -> removeAt(each, column));
      case 3 -> rows.get(0).set(Math.min(column, rows.get(0).size() - 1), quoted(value()));
      case 4 -> row.set(column, anyCell(rows));
      case 5 -> rows.forEach(each -> setAt(each, column, row.get(column)));
      case 6 -> java.util.Collections.swap(rows, 0, random.nextInt(rows.size()));
      default -> {
        List<String> body = rows.get(Math.min(rows.size() - 1, 1 + random.nextInt(rows.size())));
        int at = filled(body);
        body.set(at, quoted(like(body.get(at))));
      }
    }
    String parting = once(50) ? ";" : delimiter;
    return String.join("\n", rows.stream().map(each -> String.join(parting, each)).toList()) + "\n";
  }

  /** A column, twice as often one with a value. */
  private int filled(List<String> row) {
    int column = random.nextInt(row.size());
    return row.get(column).isEmpty() && !once(3) ? random.nextInt(row.size()) : column;
  }

  private String anyCell(List<List<String>> rows) {
    return any(any(rows));
  }

  private static void removeAt(List<String> row, int column) {
    if (column < row.size() && row.size() > 1) {
      row.remove(column);
    }
  }

  private static void setAt(List<String> row, int column, String value) {
    if (column < row.size()) {
      row.set(column, value);
    }
  }

  private static String quoted(String value) {
    boolean plain = value.chars().noneMatch(each -> ",\"\n;".indexOf(each) >= 0);
    return plain ? value : '"' + value.replace("\"", "\"\"") + '"';
  }

  /** A workbook whose bytes, parts or cells are changed. */
  private byte[] workbook(byte[] bytes) throws IOException {
    if (once(8)) {
      return bytes(bytes);
    }
    Map<String, byte[]> parts = parts(bytes);
    if (parts.isEmpty()) {
      return bytes(bytes);
    }
    List<String> sheets =
        parts.keySet().stream().filter(name -> name.startsWith("xl/worksheets/sheet")).toList();
    boolean any = sheets.isEmpty() || once(4);
    String part = any(any ? List.copyOf(parts.keySet()) : sheets);
    switch (random.nextInt(20)) {
      case 0 -> parts.remove(part);
      case 1 -> parts.put(part, bytes(parts.get(part)));
      case 2 -> parts.put(part, new byte[0]);
      case 3 -> parts.put(part, parts.get(any(List.copyOf(parts.keySet()))));
      default -> parts.put(part, inXml(parts.get(part)));
    }
    return zip(parts);
  }

  /** XML whose values, numbers of cells, types or marks are changed. */
  private byte[] inXml(byte[] part) {
    String xml = new String(part, StandardCharsets.UTF_8);
    return change(xml).getBytes(StandardCharsets.UTF_8);
  }

  private String change(String xml) {
    return switch (random.nextInt(12)) {
      case 0 -> somewhere(xml, "r=\"[A-Z]+[0-9]+\"", "r=\"" + escaped(value()) + '"');
      case 1 ->
          somewhere(xml, "t=\"s\"", "t=\"" + any(List.of("n", "b", "e", "str", "d", "zz")) + '"');
      case 2 -> somewhere(xml, "<v>[^<]*</v>", "<f>A1</f>");
      case 3 -> somewhere(xml, "s=\"[0-9]+\"", "s=\"" + random.nextInt(999) + '"');
      case 4 -> tokens(xml);
      case 5 -> somewhere(xml, ">[^<>]+<", ">" + escaped(value()) + "<");
      default -> {
        List<MatchResult> values = VALUE.matcher(xml).results().toList();
        yield values.isEmpty() ? tokens(xml) : anotherValue(xml, any(values));
      }
    };
  }

  private String anotherValue(String xml, MatchResult value) {
    return xml.substring(0, value.start(1))
        + escaped(like(value.group(1)))
        + xml.substring(value.end(1));
  }

  private String somewhere(String xml, String pattern, String instead) {
    List<MatchResult> found = Pattern.compile(pattern).matcher(xml).results().toList();
    if (found.isEmpty()) {
      return xml;
    }
    MatchResult one = any(found);
    return xml.substring(0, one.start()) + instead + xml.substring(one.end());
  }

  private static String escaped(String text) {
    return text.replaceAll("[\\x00-\\x08&<>\"$\\\\]", "");
  }

  private static Map<String, byte[]> parts(byte[] bytes) {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(bytes))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        parts.put(entry.getName(), in.readAllBytes());
      }
    } catch (IOException | IllegalArgumentException brokenBefore) {
      return parts;
    }
    return parts;
  }

  private static byte[] zip(Map<String, byte[]> parts) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream out = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        out.putNextEntry(new ZipEntry(part.getKey()));
        out.write(part.getValue());
      }
    }
    return bytes.toByteArray();
  }
}
