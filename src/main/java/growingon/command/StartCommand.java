package growingon.command;

import growingon.start.StartedNursery;
import growingon.write.NurseryFolder;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
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

  @Parameters(paramLabel = "FOLDER", description = "A folder that is new or empty.")
  private Path folder;

  @Override
  public Integer call() throws IOException {
    YearMonth thisMonth = YearMonth.now(program.clock());
    NurseryFolder.write(
        StartedNursery.workbook(thisMonth),
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

  /** As it must be typed: a name with blanks in quotes. */
  private static String quoted(Path path) {
    String text = path.toString();
    return text.contains(" ") ? '"' + text + '"' : text;
  }
}
