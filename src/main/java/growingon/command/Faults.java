package growingon.command;

import growingon.command.folder.BadReportFolder;
import growingon.write.folder.AlreadyFrozen;
import growingon.write.folder.AnotherRun;
import growingon.write.folder.FolderInUse;
import growingon.write.folder.NotAReportFolder;
import growingon.write.folder.NotAnEmptyFolder;
import growingon.write.folder.NotPutBack;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine;

/** Turns what went wrong while a command ran into a sentence and an exit code. */
final class Faults implements CommandLine.IExecutionExceptionHandler {
  @Override
  public int handleExecutionException(
      Exception fault, CommandLine line, CommandLine.ParseResult parsed) {
    return tell(fault, line);
  }

  /** Says what went wrong in a sentence, of errors of the machine too; gives the exit code. */
  static int tell(Throwable fault, CommandLine line) {
    PrintWriter err = line.getErr();
    if (showsStacktrace(line)) {
      fault.printStackTrace(err);
    }
    if (fault instanceof BadReportFolder bad) {
      return Reading.refuse(List.of(bad.problem()), err);
    }
    if (TooLarge.isBehind(fault)) {
      TooLarge told = fault instanceof TooLarge known ? known : new TooLarge("Planning", fault);
      err.println(told.getMessage() + ".");
      err.println("Nothing was written.");
      return ExitCode.BAD_INPUT;
    }
    if (fault instanceof NotAReportFolder
        || fault instanceof AnotherRun
        || fault instanceof FolderInUse
        || fault instanceof NotAnEmptyFolder
        || fault instanceof AlreadyFrozen) {
      err.println(fault.getMessage());
      return ExitCode.WRONG_USAGE;
    }
    if (fault instanceof NotPutBack) {
      err.println(fault.getMessage());
      return ExitCode.OUR_FAULT;
    }
    if (fault instanceof IOException) {
      err.println("The files could not be written: " + reason(fault));
      err.println("What was there before is as it was.");
      return ExitCode.OUR_FAULT;
    }
    err.println("This is a fault of the program, not of your files: " + reason(fault));
    err.println("Nothing was written. Run again with --stacktrace and report what it shows.");
    return ExitCode.OUR_FAULT;
  }

  private static boolean showsStacktrace(CommandLine line) {
    CommandLine top = line;
    while (top.getParent() != null) {
      top = top.getParent();
    }
    return top.getCommand() instanceof GrowingOn program && program.showsStacktrace();
  }

  private static String reason(Throwable fault) {
    String message = fault.getMessage();
    return message == null || message.isBlank()
        ? fault.getClass().getSimpleName()
        : fault.getClass().getSimpleName() + ", " + message;
  }
}
