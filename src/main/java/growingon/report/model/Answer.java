package growingon.report.model;

import java.util.List;
import java.util.Objects;

/**
 * An answer to a question that a reader has first, with how it came about.
 *
 * @param question in a few words
 * @param sentences the answer
 * @param how sentences that say how its figures came about
 * @param tables names of the tables that it is taken from
 */
public record Answer(
    String question, List<String> sentences, List<String> how, List<String> tables) {
  public Answer {
    Objects.requireNonNull(question);
    sentences = List.copyOf(sentences);
    how = List.copyOf(how);
    tables = List.copyOf(tables);
  }
}
