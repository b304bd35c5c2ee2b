package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.load.LaidOut;
import growingon.load.LoadOptions;
import growingon.load.Loader;
import growingon.money.Accounts;
import growingon.nursery.Inputs;
import growingon.nursery.number.Writing;
import growingon.plan.Planned;
import growingon.project.Projector;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the cells to fill are said to move, against plans in which they are filled in. */
class WhatMovesMostTest {
  private static final LoadOptions OPTIONS =
      new LoadOptions(LocalDate.of(2026, 11, 29)).takingLists();
  private static final Pattern MOVES =
      Pattern.compile("(?:nothing|present value by ([0-9,]+)) \\(from (\\S.*) to (\\S.*)\\)");
  private static final String MONEY = "money and growth";

  @TempDir Path folder;
  private Path list;

  @BeforeEach
  void list() throws IOException {
    list = folder.resolve("stock.csv");
    Files.writeString(
        list,
        """
        Plant,Size,Qty,Place,Price
        Field maple,C3,240,Tunnel 1,
        Hornbeam,C10,130,Tunnel 1,38
        Scots pine,C15,60,Bed 2,
        Yew,60-80,300,Field,
        Ginkgo biloba,C7,40,Tunnel 1,
        """);
  }

  private List<List<String>> fills() {
    LaidOut laid =
        LaidOut.of(
                List.of(list),
                List.of(),
                folder.resolve("mine"),
                "mine",
                OPTIONS.valuing(Planned::worth))
            .value()
            .orElseThrow();
    return laid.fills();
  }

  private static String cell(List<String> fill, String column) {
    return fill.get(LaidOut.fillColumns().indexOf(column));
  }

  /** By the accounts, not by the sums that the program takes. */
  private double presentValue(List<String> fill, String answer) throws IOException {
    Path nursery = Files.createDirectories(folder.resolve("answered"));
    Files.writeString(nursery.resolve("own words.csv"), "kind,yours,ours\nlist,../stock.csv,\n");
    Files.writeString(
        nursery.resolve("to fill.csv"),
        "fill in,usual,table,row,column\n\"%s\",%s,%s,\"%s\",%s\n"
            .formatted(
                answer,
                cell(fill, "usual"),
                cell(fill, "table"),
                cell(fill, "row"),
                cell(fill, "column")));
    Inputs inputs = Loader.load(nursery, OPTIONS).value().orElseThrow();
    return Accounts.of(Projector.project(inputs.scenario())).presentValue();
  }

  @Test
  void moves_areWhatPlansWithTheAnswersDifferBy() throws IOException {
    List<List<String>> ranged =
        fills().stream().filter(fill -> MOVES.matcher(cell(fill, "moves")).matches()).toList();
    assertThat(ranged).hasSizeGreaterThan(15);
    List<String> columns = ranged.stream().map(fill -> cell(fill, "column")).distinct().toList();
    assertThat(columns).contains("price", "units", "sales", "trees", "value", "trunk mm");
    for (List<String> fill : ranged) {
      Matcher moves = MOVES.matcher(cell(fill, "moves"));
      assertThat(moves.matches()).isTrue();
      double low = presentValue(fill, moves.group(2).replace(",", ""));
      double high = presentValue(fill, moves.group(3).replace(",", ""));
      String told = moves.group(1) == null ? "0" : moves.group(1);
      assertThat(told)
          .as(String.join(" | ", fill))
          .isEqualTo(Writing.USUAL.threeFigures(Math.abs(high - low)));
    }
  }

  @Test
  void money_isAskedInTheOrderOfWhatItMoves() {
    List<Double> asked = new ArrayList<>();
    for (List<String> fill : fills()) {
      Matcher moves = MOVES.matcher(cell(fill, "moves"));
      if (cell(fill, "block").equals(MONEY) && moves.matches()) {
        asked.add(Double.valueOf(moves.group(1).replace(",", "")));
      }
    }
    assertThat(asked).hasSizeBetween(10, 12).isSortedAccordingTo(Comparator.reverseOrder());
    assertThat(asked.get(0)).isPositive();
  }

  @Test
  void moves_whereNothingIsValued_areWords() {
    LaidOut laid =
        LaidOut.of(List.of(list), List.of(), folder.resolve("mine"), "mine", OPTIONS)
            .value()
            .orElseThrow();
    assertThat(laid.fills()).noneMatch(fill -> cell(fill, "moves").startsWith("present value"));
    assertThat(laid.sentences()).noneMatch(line -> line.contains("moves most"));
  }

  @Test
  void plantsThatACellIsAbout_areWrittenAsNumbersAre() throws IOException {
    Files.writeString(
        list,
        """
        Plant,Size,Qty,Place
        Field maple,C3,5300,Tunnel 1
        Hornbeam,C3,1,Bed 2
        """);
    assertThat(fills().stream().filter(fill -> cell(fill, "column").equals("square metres")))
        .extracting(fill -> cell(fill, "row") + ": " + cell(fill, "moves"))
        .containsExactly("Tunnel 1: 5,300 plants", "Bed 2: 1 plant");
  }
}
