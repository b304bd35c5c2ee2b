package growingon.load.own.heading;

import growingon.load.own.sheet.SheetCell;
import growingon.load.own.sheet.SheetRow;
import growingon.load.own.text.CountText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;

/** The cells of a row by what their headings are. */
public record HeadedCells(List<HeadingRead> all) {
  public HeadedCells {
    all = List.copyOf(all);
  }

  /** A filled cell and its heading. */
  public record Filled(HeadingRead head, SheetCell cell) {
    public String text() {
      return cell.text().strip();
    }
  }

  public boolean has(String ours) {
    return all.stream().anyMatch(head -> head.is(ours));
  }

  public void each(SheetRow row, String ours, Consumer<Filled> use) {
    for (HeadingRead head : all) {
      if (head.is(ours)) {
        row.cell(head.column()).ifPresent(cell -> use.accept(new Filled(head, cell)));
      }
    }
  }

  /** The first that is filled; empty if none is. */
  public String first(SheetRow row, String ours) {
    for (HeadingRead head : all) {
      if (head.is(ours) && !row.text(head.column()).isBlank()) {
        return row.text(head.column()).strip();
      }
    }
    return "";
  }

  /** What stands under several headings, one after the other. */
  public String joined(SheetRow row, String... ours) {
    List<String> texts = new ArrayList<>();
    for (String each : ours) {
      each(row, each, cell -> texts.add(cell.text()));
    }
    return String.join(" ", texts);
  }

  /** What all that are numbers of plants come to; empty if none is. */
  OptionalInt sum(SheetRow row, String ours) {
    int[] sum = {0};
    boolean[] any = {false};
    each(
        row,
        ours,
        cell ->
            CountText.of(cell.cell())
                .value()
                .ifPresent(
                    number -> {
                      sum[0] += number;
                      any[0] = true;
                    }));
    return any[0] ? OptionalInt.of(sum[0]) : OptionalInt.empty();
  }

  /** The first that is a number of plants. */
  public OptionalInt count(SheetRow row, String ours) {
    for (HeadingRead head : all) {
      Optional<Integer> value =
          head.is(ours)
              ? row.cell(head.column()).flatMap(cell -> CountText.of(cell).value())
              : Optional.empty();
      if (value.isPresent()) {
        return OptionalInt.of(value.get());
      }
    }
    return OptionalInt.empty();
  }
}
