package growingon.command;

import growingon.problem.advice.FileAdvice;
import java.nio.file.InvalidPathException;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;

/** Says what is wrong with a command line; a path that can be none is bad input, not usage. */
final class WrongUsage implements IParameterExceptionHandler {
  private final IParameterExceptionHandler usual;

  WrongUsage(IParameterExceptionHandler usual) {
    this.usual = usual;
  }

  @Override
  public int handleParseException(ParameterException fault, String[] args) throws Exception {
    if (fault.getCause() instanceof InvalidPathException path) {
      CommandLine line = fault.getCommandLine();
      return Reading.refuse(List.of(FileAdvice.noPathHere(path.getInput())), line.getErr());
    }
    return usual.handleParseException(fault, args);
  }
}
