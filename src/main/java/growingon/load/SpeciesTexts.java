package growingon.load;

import growingon.load.cell.Findings;
import growingon.load.cell.Texts;
import growingon.load.cell.Utf8;
import growingon.load.file.NurseryFiles;
import growingon.load.source.Grid;
import growingon.load.source.Workbook;
import growingon.load.table.species.SpeciesTable;
import growingon.problem.Where;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The texts of a nursery's species, as they stand in its files.
 *
 * @param csv the table, also where it is a sheet of a workbook
 * @param json species.json
 */
public record SpeciesTexts(Optional<String> csv, Optional<String> json) {

  /**
   * Reads them.
   *
   * @param what a plan.json, a nursery folder, or one workbook
   * @param speciesFrom folder that the species are read from instead, if any
   */
  public static SpeciesTexts of(Path what, Optional<Path> speciesFrom) {
    List<Path> sources = PlanSources.of(what).files();
    Path nursery = speciesFrom.orElse(sources.get(sources.size() - 1));
    if (!Files.isDirectory(nursery)) {
      return new SpeciesTexts(sheet(nursery), Optional.empty());
    }
    Optional<String> csv = text(nursery.resolve(SpeciesTable.FORMAT.name() + ".csv"));
    return new SpeciesTexts(
        csv.or(() -> sheetIn(nursery)), text(nursery.resolve(NurseryFiles.SPECIES_JSON)));
  }

  private static Optional<String> text(Path file) {
    return Files.isRegularFile(file)
        ? Utf8.read(file, Where.file(file.getFileName().toString()), new Findings())
        : Optional.empty();
  }

  private static Optional<String> sheetIn(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(Files::isRegularFile)
          .filter(file -> NurseryFiles.extensionOf(file.getFileName().toString()).equals("xlsx"))
          .filter(file -> !file.getFileName().toString().startsWith("~$"))
          .sorted()
          .map(SpeciesTexts::sheet)
          .flatMap(Optional::stream)
          .findFirst();
    } catch (IOException broken) {
      throw new UncheckedIOException("a folder that was read cannot be read again", broken);
    }
  }

  private static Optional<String> sheet(Path workbook) {
    return Workbook.read(workbook, new Findings()).orElse(List.of()).stream()
        .filter(grid -> Texts.headingKey(grid.where().sheet()).equals(SpeciesTable.FORMAT.name()))
        .filter(grid -> !grid.rows().isEmpty())
        .map(SpeciesTexts::csv)
        .findFirst();
  }

  private static String csv(Grid grid) {
    int columns = grid.rows().stream().mapToInt(row -> row.cells().lastKey() + 1).max().orElse(0);
    StringBuilder text = new StringBuilder();
    for (Grid.GridRow row : grid.rows()) {
      List<String> cells = new ArrayList<>();
      for (int column = 0; column < columns; column++) {
        cells.add(quoted(row.cell(column).shown()));
      }
      text.append(String.join(",", cells)).append('\n');
    }
    return text.toString();
  }

  /** As RFC 4180 quotes it. */
  private static String quoted(String cell) {
    boolean plain = cell.chars().noneMatch(each -> ",\"\r\n".indexOf(each) >= 0);
    return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }
}
