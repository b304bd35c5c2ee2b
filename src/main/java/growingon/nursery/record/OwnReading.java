package growingon.nursery.record;

import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * How a grower's own list was read, for whoever wants to check it.
 *
 * @param files names of the lists' files
 * @param sentences what is said of it first
 * @param tables every row and word of it with what it was read as
 */
public record OwnReading(Set<String> files, List<String> sentences, List<Listed> tables) {
  public OwnReading {
    files = Set.copyOf(files);
    sentences = List.copyOf(sentences);
    tables = List.copyOf(tables);
  }

  /**
   * A table of texts and numbers.
   *
   * @param name as in figures.json
   * @param title for a reader
   * @param columns headings
   * @param rows a text, number or yes/no for every column, or one that is {@link Linked} to the
   *     list; an empty text where nothing is known
   */
  public record Listed(String name, String title, List<String> columns, List<List<Object>> rows) {
    public Listed {
      Objects.requireNonNull(name);
      Objects.requireNonNull(title);
      columns = List.copyOf(columns);
      rows = rows.stream().map(List::copyOf).toList();
    }
  }

  /**
   * A text or number that comes from the list.
   *
   * @param to what it comes from
   */
  public record Linked(Object shown, InList to) {
    public Linked {
      Objects.requireNonNull(shown);
      Objects.requireNonNull(to);
    }
  }
}
