package growingon.load.list;

import growingon.load.file.AnswersGiven;
import growingon.load.file.AsLaidOut;
import growingon.load.file.NurseryFiles;
import growingon.load.own.heading.OwnWords;
import growingon.load.own.question.Fill;
import growingon.load.own.question.Moved;
import growingon.load.source.Answer;
import growingon.load.source.FillRow;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * What a grower has said of lists, and of the nursery around them.
 *
 * @param words what words mean
 * @param answers of the sheet to fill
 * @param site what its settings say of its site and money
 * @param moved what each cell to fill was told to move
 * @param toFill rows of the sheet to fill, if there is one
 * @param laidOut what the tables around the lists were laid out with
 */
public record Said(
    OwnWords words,
    List<Answer> answers,
    SiteSaid site,
    Moved moved,
    Optional<List<FillRow>> toFill,
    AsLaidOut laidOut) {
  /** Nothing is said yet. */
  public static final Said NOTHING =
      new Said(
          OwnWords.NONE,
          List.of(),
          SiteSaid.NOTHING,
          Moved.UNKNOWN,
          Optional.empty(),
          AsLaidOut.UNKNOWN);

  public Said {
    answers = List.copyOf(answers);
  }

  /** What is said in a nursery's files. */
  public static Said in(NurseryFiles files) {
    return new Said(
        AnswersGiven.words(files.tables()),
        AnswersGiven.of(files.tables()),
        SiteSaid.of(files),
        AnswersGiven.moved(files.tables()),
        AnswersGiven.rows(files.tables()),
        AsLaidOut.in(files.tables()));
  }

  Said and(Answer answer) {
    return new Said(
        words,
        Stream.concat(answers.stream(), Stream.of(answer)).toList(),
        site,
        moved,
        toFill,
        laidOut);
  }

  /**
   * Row of a question on the sheet to fill, if it is there. Where there is no sheet yet, it will be
   * laid out with all that is asked now below its headings.
   */
  OptionalInt rowOf(Fill asked, List<Fill> all) {
    if (toFill.isEmpty()) {
      return OptionalInt.of(all.indexOf(asked) + 2);
    }
    return toFill.get().stream()
        .filter(row -> !row.answered() && row.asks(asked))
        .mapToInt(row -> row.where().row())
        .findFirst();
  }
}
