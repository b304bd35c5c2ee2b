package growingon.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A reader to be fed with changed files: what is changed, and the command that reads it. */
enum FuzzTarget {
  /** The tables of a nursery as CSV. */
  TABLES {
    @Override
    List<String> prepare(Path folder, Path seeds, Mutation mutation) throws IOException {
      copy(seeds.resolve("nursery"), folder);
      mutateOne(folder, ".csv", mutation);
      return command(mutation, folder);
    }
  },
  /** Numbers at the edge of what is allowed, planned and written. */
  NUMBERS {
    @Override
    List<String> prepare(Path folder, Path seeds, Mutation mutation) throws IOException {
      copy(seeds.resolve("nursery"), folder);
      for (int i = mutation.number(4); i >= 0; i--) {
        Path file = one(folder, mutation.once(5) ? ".json" : ".csv", mutation);
        Files.writeString(file, mutation.number(Files.readString(file)));
      }
      return List.of("plan", folder.toString(), "--draws", "3", "--out", report(folder));
    }
  },
  /** The same as one workbook, also with damaged bytes. */
  WORKBOOK {
    @Override
    List<String> prepare(Path folder, Path seeds, Mutation mutation) throws IOException {
      copy(seeds.resolve("workbook"), folder);
      mutateOne(folder, ".xlsx", mutation);
      return command(mutation, folder);
    }
  },
  /** plan.json, nursery.json and species.json. */
  JSON {
    @Override
    List<String> prepare(Path folder, Path seeds, Mutation mutation) throws IOException {
      copy(seeds.resolve("nursery"), folder);
      mutateOne(folder, ".json", mutation);
      return command(mutation, folder);
    }
  },
  /** Settings as a table. */
  SETTINGS {
    @Override
    List<String> prepare(Path folder, Path seeds, Mutation mutation) throws IOException {
      copy(seeds.resolve("nursery"), folder);
      Files.delete(folder.resolve("nursery.json"));
      Path settings = seeds.resolve("settings.csv");
      Files.write(
          folder.resolve("settings.csv"),
          mutation.file("settings.csv", Files.readAllBytes(settings)));
      return command(mutation, folder);
    }
  },
  /** The quick sheet. */
  QUICK {
    @Override
    List<String> prepare(Path folder, Path seeds, Mutation mutation) throws IOException {
      copy(seeds.resolve("quick"), folder);
      mutateOne(folder, ".csv", mutation);
      return command(mutation, folder);
    }
  },
  /** A kept plan, with the daybook that is set against it. */
  KEPT {
    @Override
    List<String> prepare(Path folder, Path seeds, Mutation mutation) throws IOException {
      copy(seeds.resolve("review"), folder);
      if (mutation.once(3)) {
        mutateOne(folder, "daybook.csv", mutation);
      } else {
        mutateOne(folder.resolve("plans/kept"), ".json", mutation);
      }
      return List.of("review", folder.toString(), "--out", report(folder));
    }
  },
  /** The command line. */
  OPTIONS {
    @Override
    List<String> prepare(Path folder, Path seeds, Mutation mutation) throws IOException {
      copy(seeds.resolve("nursery"), folder);
      List<String> words = new ArrayList<>(List.of("check", folder.toString()));
      List<String> more =
          List.of(
              "plan",
              "check",
              "review",
              "compare",
              "start",
              "--draws",
              "--seed",
              "--for",
              "--out",
              "--force",
              "--keep",
              "--with-costs",
              "--with-prices",
              "partner",
              "--help",
              "--version",
              "@" + folder.resolve("care.csv"),
              folder.resolve("care.csv").toString(),
              "",
              "--draws=-1",
              "--seed=9223372036854775808",
              "--for=nobody");
      for (int i = mutation.number(5); i >= 0; i--) {
        String word = mutation.once(3) ? mutation.value() : more.get(mutation.number(more.size()));
        words.add(mutation.number(words.size() + 1), word);
      }
      words.replaceAll(word -> word.equals("--out") ? "--out=" + report(folder) : word);
      return words;
    }
  };

  /** Fills a folder with changed files; gives the command that reads them. */
  abstract List<String> prepare(Path folder, Path seeds, Mutation mutation) throws IOException;

  /** Nearly always only read, as that is quick; else planned and written too. */
  private static List<String> command(Mutation mutation, Path folder) {
    return mutation.once(6)
        ? List.of("plan", folder.toString(), "--draws", "3", "--out", report(folder))
        : List.of("check", folder.toString());
  }

  private static String report(Path folder) {
    return folder.resolve("report").toString();
  }

  private static void mutateOne(Path folder, String ending, Mutation mutation) throws IOException {
    Path file = one(folder, ending, mutation);
    Files.write(file, mutation.file(file.toString(), Files.readAllBytes(file)));
  }

  private static Path one(Path folder, String ending, Mutation mutation) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      List<Path> files = all.filter(file -> file.toString().endsWith(ending)).sorted().toList();
      return files.get(mutation.number(files.size()));
    }
  }

  static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path each : all.sorted().toList()) {
        Path copy = to.resolve(from.relativize(each).toString());
        if (Files.isDirectory(each)) {
          Files.createDirectories(copy);
        } else {
          Files.copy(each, copy);
        }
      }
    }
  }
}
