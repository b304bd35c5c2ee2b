package growingon.write.text;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import growingon.report.fit.SpeciesEdit;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A proposal as edits of the grower's own texts: only numbers are replaced, and what was is told in
 * a comment; everything else stays letter by letter.
 */
public final class ProposalText {
  private static final JsonFactory JSON =
      JsonFactory.builder()
          .enable(JsonReadFeature.ALLOW_JAVA_COMMENTS)
          .enable(JsonReadFeature.ALLOW_TRAILING_COMMA)
          .build();

  private static final String GROWTH_SURE = "growth sure %";

  private ProposalText() {}

  /** A number or an object, and where it stands. */
  private record Place(int from, int to) {}

  /**
   * Edits species.json.
   *
   * @param text the file as it is
   * @param edits what is proposed; those of species that it does not have are left out
   * @param until last month of the records, as 2026-10
   * @param head first line: what the file is
   */
  public static String json(String text, List<SpeciesEdit> edits, String until, String head) {
    Map<String, Place> places = places(text);
    List<ProposalEdits.Change> changes = new ArrayList<>();
    Map<Integer, List<String>> comments = new TreeMap<>();
    ProposalEdits.bySpecies(edits)
        .forEach(
            (name, own) -> {
              Place species = places.get(path(name));
              if (species != null) {
                new Entry(text, places, species, own, changes, comments).edit(until);
              }
            });
    comments.forEach((end, all) -> changes.add(comment(text, end, all)));
    return "// " + head + "\n" + ProposalEdits.applied(text, changes);
  }

  /** One comment at the end of a line, which goes on with the grower's own where there is one. */
  private static ProposalEdits.Change comment(String text, int end, List<String> all) {
    String begin = hasComment(text, end) ? "; " : "  // ";
    return new ProposalEdits.Change(end, end, begin + String.join("; ", all));
  }

  /** Whether a line has a comment up to its end, outside of what is quoted. */
  private static boolean hasComment(String text, int end) {
    boolean isQuoted = false;
    for (int i = text.lastIndexOf('\n', end - 1) + 1; i < end; i++) {
      char at = text.charAt(i);
      if (isQuoted && at == '\\') {
        i++;
      } else if (at == '"') {
        isQuoted = !isQuoted;
      } else if (!isQuoted && text.startsWith("//", i)) {
        return true;
      }
    }
    return false;
  }

  /** The edits of one species. Keys that it does not have yet go to its beginning, a line each. */
  private record Entry(
      String text,
      Map<String, Place> places,
      Place species,
      List<SpeciesEdit> edits,
      List<ProposalEdits.Change> changes,
      Map<Integer, List<String>> comments) {
    void edit(String until) {
      StringBuilder added = new StringBuilder();
      edits.stream().filter(SpeciesEdit::isOther).forEach(edit -> number(edit, added));
      addGrowthSure(added);
      edits.stream()
          .filter(edit -> !edit.isGrowth() && edit.sure().isPresent())
          .forEach(
              edit -> put(edit.sureKey(), ProposalEdits.plain(edit.sure().getAsDouble()), added));
      addPriors("prior", edit -> OptionalDouble.of(edit.prior()), added);
      addPriors("prior sure %", SpeciesEdit::priorSure, added);
      put("learnt until", '"' + until + '"', added);
      if (!added.isEmpty()) {
        boolean goesOn =
            text.charAt(species.from + 1) != '\n' && text.charAt(species.from + 1) != '\r';
        added.append(goesOn ? "\n     " : "");
        changes.add(new ProposalEdits.Change(species.from + 1, species.from + 1, added.toString()));
      }
    }

    private String name() {
      return edits.get(0).species();
    }

    private static String line(String key, String value, String comment) {
      return "\n      \"%s\": %s,%s"
          .formatted(key, value, comment.isEmpty() ? "" : "  // " + comment);
    }

    /** Puts a value in the place of another, or adds it. */
    private void put(String key, String value, StringBuilder added) {
      Place at = places.get(path(name(), key));
      if (at == null) {
        added.append(line(key, value, ""));
      } else {
        changes.add(new ProposalEdits.Change(at.from, at.to, value));
      }
    }

    private void number(SpeciesEdit edit, StringBuilder added) {
      Place at = places.get(fullPath(edit));
      if (at != null) {
        changes.add(new ProposalEdits.Change(at.from, at.to, ProposalEdits.number(edit.number())));
        comments
            .computeIfAbsent(lineEnd(text, at.to), each -> new ArrayList<>())
            .add(edit.comment());
      } else if (edit.isGrowth()) {
        grow(edit, added);
      } else {
        added.append(line(edit.key(), ProposalEdits.number(edit.number()), edit.comment()));
      }
    }

    /** Growth that was the library's becomes the grower's own. */
    private void grow(SpeciesEdit edit, StringBuilder added) {
      String law =
          "\"%s\": { \"curve\": \"steady\", \"g\": %s%s }"
              .formatted(
                  edit.condition(),
                  ProposalEdits.number(edit.number()),
                  edit.mostMm().isPresent()
                      ? ", \"most mm\": " + ProposalEdits.plain(edit.mostMm().getAsDouble())
                      : "");
      Place growth = places.get(path(name(), "growth"));
      if (growth == null) {
        added.append(line("growth", "{ " + law + " }", edit.comment()));
      } else {
        changes.add(new ProposalEdits.Change(growth.from + 1, growth.from + 1, " " + law + ","));
      }
    }

    /** How sure growth is: one number, or one for each condition where there are several. */
    private void addGrowthSure(StringBuilder added) {
      Map<String, String> sures = new LinkedHashMap<>();
      Place at = places.get(path(name(), GROWTH_SURE));
      List<String> conditions = edits.get(0).conditions();
      for (String condition : conditions) {
        Place own = places.get(path(name(), GROWTH_SURE, condition));
        Place typed = own != null ? own : at != null && isNumber(at) ? at : null;
        if (typed != null) {
          sures.put(condition, text.substring(typed.from, typed.to));
        }
      }
      boolean isLearnt = false;
      for (SpeciesEdit edit : edits) {
        if (edit.isGrowth() && edit.sure().isPresent()) {
          sures.put(edit.condition(), ProposalEdits.plain(edit.sure().getAsDouble()));
          isLearnt = true;
        }
      }
      if (isLearnt) {
        put(
            GROWTH_SURE,
            conditions.size() == 1 ? sures.get(conditions.get(0)) : object(sures),
            added);
      }
    }

    private boolean isNumber(Place at) {
      return text.charAt(at.from) != '{';
    }

    private static String object(Map<String, String> values) {
      return values.entrySet().stream()
          .map(each -> "\"%s\": %s".formatted(each.getKey(), each.getValue()))
          .collect(Collectors.joining(", ", "{ ", " }"));
    }

    /** Notes what was assumed before, from which the next fit starts again. */
    private void addPriors(
        String key, Function<SpeciesEdit, OptionalDouble> prior, StringBuilder added) {
      Map<String, String> priors = new LinkedHashMap<>();
      for (SpeciesEdit edit : edits) {
        boolean isNew = !places.containsKey(path(name(), key, edit.priorKey()));
        OptionalDouble value = isNew ? prior.apply(edit) : OptionalDouble.empty();
        value.ifPresent(number -> priors.put(edit.priorKey(), ProposalEdits.plain(number)));
      }
      Place at = places.get(path(name(), key));
      if (at == null && !priors.isEmpty()) {
        added.append(line(key, object(priors), ""));
      } else if (!priors.isEmpty()) {
        String more = object(priors);
        changes.add(
            new ProposalEdits.Change(
                at.from + 1, at.from + 1, more.substring(1, more.length() - 2) + ","));
      }
    }
  }

  private static String path(String... keys) {
    return String.join("\n", keys).toLowerCase(Locale.ROOT);
  }

  private static String fullPath(SpeciesEdit edit) {
    return edit.condition().isEmpty()
        ? path(edit.species(), edit.key())
        : path(edit.species(), "growth", edit.condition(), edit.key());
  }

  private static int lineEnd(String text, int from) {
    int end = text.indexOf('\n', from);
    if (end < 0) {
      return text.length();
    }
    return end > 0 && text.charAt(end - 1) == '\r' ? end - 1 : end;
  }

  /** Where the numbers and objects under "species" stand. */
  private static Map<String, Place> places(String text) {
    Map<String, Place> places = new HashMap<>();
    try (JsonParser parser = JSON.createParser(text)) {
      Deque<String> keys = new ArrayDeque<>();
      JsonToken token = parser.nextToken();
      while (token != null) {
        switch (token) {
          case FIELD_NAME -> keys.addLast(ProposalEdits.key(parser.currentName()));
          case START_OBJECT, START_ARRAY -> {
            note(places, keys, parser);
            if (token == JsonToken.START_ARRAY) {
              parser.skipChildren();
              keys.pollLast();
            }
          }
          case END_OBJECT -> {
            close(places, keys, parser);
            keys.pollLast();
          }
          default -> {
            note(places, keys, parser);
            keys.pollLast();
          }
        }
        token = parser.nextToken();
      }
    } catch (IOException broken) {
      throw new UncheckedIOException("a file that was read cannot be read again", broken);
    }
    return places;
  }

  /** An object goes on to its closing bracket. */
  private static void close(Map<String, Place> places, Deque<String> keys, JsonParser parser) {
    if (keys.size() < 2) {
      return;
    }
    String path = path(List.copyOf(keys).subList(1, keys.size()).toArray(String[]::new));
    int end = (int) parser.currentTokenLocation().getCharOffset() + 1;
    places.computeIfPresent(path, (same, place) -> new Place(place.from, end));
  }

  private static void note(Map<String, Place> places, Deque<String> keys, JsonParser parser)
      throws IOException {
    List<String> path = new ArrayList<>(keys);
    if (path.size() < 2 || !path.get(0).equalsIgnoreCase("species")) {
      return;
    }
    int from = (int) parser.currentTokenLocation().getCharOffset();
    int quotes = parser.currentToken() == JsonToken.VALUE_STRING ? 2 : 0;
    int to = from + parser.getTextLength() + quotes;
    places.put(path(path.subList(1, path.size()).toArray(String[]::new)), new Place(from, to));
  }

  /**
   * Edits species.csv.
   *
   * @param text the file as it is
   * @param edits what is proposed; those of species that it does not have are left out
   * @param until last month of the records, as 2026-10
   * @param head first line: what the file is
   */
  public static String csv(String text, List<SpeciesEdit> edits, String until, String head) {
    return ProposalCsv.edited(text, edits, until, head);
  }
}
