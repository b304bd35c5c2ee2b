package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Clock;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** What a grower reads when something went wrong that is no fault of the files. */
class FaultsTest {
  @Command(name = "breaks")
  private record Breaks(Exception fault) implements Callable<Integer> {
    @Override
    public Integer call() throws Exception {
      throw fault;
    }
  }

  private static Ran after(Exception fault) {
    StringWriter err = new StringWriter();
    CommandLine line = new CommandLine(new Breaks(fault));
    line.setErr(new PrintWriter(err));
    line.setExecutionExceptionHandler(new Faults());
    return new Ran(line.execute(), "", err.toString());
  }

  @Test
  void faultOfTheProgram_isExitCodeOne_withoutAStackTrace() {
    Ran ran = after(new IllegalStateException("the balance of lot elms breaks in 2027-03"));
    assertThat(ran.code()).isEqualTo(1);
    assertThat(ran.err())
        .contains("fault of the program, not of your files")
        .contains("the balance of lot elms breaks in 2027-03")
        .doesNotContain("\tat ");
  }

  @Test
  void memoryThatRanOutInAThread_isBadInput_andSaysWhatToDo() {
    Ran ran = after(new IllegalStateException("drawing", new OutOfMemoryError("Java heap space")));
    assertThat(ran.code()).isEqualTo(3);
    assertThat(ran.err())
        .startsWith("Planning: this is too large for the ")
        .contains("plan fewer lots, seasons or draws")
        .doesNotContain("\tat ");
  }

  @Test
  void errorOfTheMachine_isExitCodeOne_withoutAStackTrace() {
    StringWriter err = new StringWriter();
    CommandLine line = new CommandLine(new GrowingOn(Clock.systemUTC(), stage -> {}));
    line.setErr(new PrintWriter(err));

    int code = Faults.tell(new StackOverflowError(), line);

    assertThat(code).isEqualTo(1);
    assertThat(err.toString())
        .startsWith("This is a fault of the program, not of your files: StackOverflowError")
        .doesNotContain("\tat ");
  }

  @Test
  void fullDisk_isExitCodeOne_andSaysThatEarlierFilesAreWhole() {
    Ran ran = after(new IOException("No space left on device"));
    assertThat(ran.code()).isEqualTo(1);
    assertThat(ran.err()).contains("No space left on device", "What was there before is as it was");
  }
}
