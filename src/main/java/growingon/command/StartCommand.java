package growingon.command;

import growingon.load.LaidOut;
import growingon.load.LoadOptions;
import growingon.plan.Planned;
import growingon.problem.Loaded;
import growingon.problem.advice.ListAdvice;
import growingon.start.StartedNursery;
import growingon.write.folder.NurseryFolder;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Lays out a nursery folder to type over. */
@Command(
    name = "start",
    mixinStandardHelpOptions = true,
    description = {
      "Lays out a new nursery folder: a workbook with example rows to type over, and a plan.",
      "Its sheet quick answers one question from ten cells."
    })
final class StartCommand implements Callable<Integer> {
  @ParentCommand private GrowingOn program;
  @Spec private CommandSpec spec;
  @Mixin private Problems problemsShown;

  @Parameters(paramLabel = "FOLDER", description = "A folder that is new or empty.")
  private Path folder;

  @Option(
      names = "--species",
      paramLabel = "NAMES",
      split = ";",
      description = {
        "Species that get a row each, filled by the shipped library of species,",
        "with semicolons between them: --species \"Field maple; Scots pine\"."
      })
  private List<String> species = List.of();

  @Option(
      names = "--from",
      paramLabel = "LIST",
      description = {
        "Your own stock list, .xlsx or .csv, as it is: it is read where it lies, and all that is not",
        "in it is laid out with usual values. May be given several times."
      })
  private List<Path> lists = List.of();

  @Option(
      names = "--offers",
      paramLabel = "LIST",
      description = {
        "What a supplier offers, .xlsx or .csv, as they sent it: plant, size, price, least number and",
        "month of each row become an offer, none taken. May be given several times, beside --from or",
        "alone."
      })
  private List<Path> offers = List.of();

  @Override
  public Integer call() throws IOException {
    return lists.isEmpty() && offers.isEmpty() ? examples() : around();
  }

  /** A nursery around lists of the grower's own. */
  private Integer around() throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    String name = folder.toAbsolutePath().normalize().getFileName().toString();
    for (Path list : Stream.concat(lists.stream(), offers.stream()).toList()) {
      if (!Files.isRegularFile(list)) {
        return Reading.refuse(
            List.of(ListAdvice.notThere(list.toString())), spec.commandLine().getErr());
      }
    }
    Loaded<LaidOut> laid =
        LaidOut.of(
            lists,
            offers,
            folder,
            name,
            new LoadOptions(LocalDate.now(program.clock())).valuing(Planned::worth));
    if (laid.value().isEmpty()) {
      return problemsShown.refuse(laid.problems(), spec.commandLine().getErr());
    }
    NurseryFolder.write(
        StartedNursery.workbook(laid.value().get()),
        StartedNursery.WORKBOOK,
        StartedNursery.planOf(name),
        StartedNursery.PLAN,
        folder);
    laid.value().get().sentences().forEach(out::println);
    out.println("Now: plan %s".formatted(quoted(folder)));
    return ExitCode.DONE;
  }

  private Integer examples() throws IOException {
    List<String> names = names();
    YearMonth thisMonth = YearMonth.now(program.clock());
    NurseryFolder.write(
        StartedNursery.workbook(thisMonth, names),
        StartedNursery.WORKBOOK,
        StartedNursery.plan(),
        StartedNursery.PLAN,
        folder);
    PrintWriter out = spec.commandLine().getOut();
    Path workbook = folder.resolve(StartedNursery.WORKBOOK);
    out.println("Open %s and type over the example rows.".formatted(workbook));
    out.println("For one question fill in the ten cells of its sheet quick, and nothing else.");
    out.println("Save it, close it, and run the command: plan %s".formatted(quoted(folder)));
    return ExitCode.DONE;
  }

  /** Each name once; one that the library cannot serve is wrong usage. */
  private List<String> names() {
    Map<String, String> names = new LinkedHashMap<>();
    for (String typed : species) {
      String name = typed.strip();
      if (!name.isEmpty()) {
        StartedNursery.objection(name)
            .ifPresent(
                why -> {
                  throw new ParameterException(spec.commandLine(), why);
                });
        names.putIfAbsent(name.toLowerCase(Locale.ROOT), name);
      }
    }
    return List.copyOf(names.values());
  }

  /** As it must be typed: a name with blanks in quotes. */
  private static String quoted(Path path) {
    String text = path.toString();
    return text.contains(" ") ? '"' + text + '"' : text;
  }
}
