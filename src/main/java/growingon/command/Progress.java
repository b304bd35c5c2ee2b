package growingon.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.Timer;
import java.util.TimerTask;

/**
 * Says what is being done once that takes longer than two seconds, on a terminal only; in a pipe it
 * stays quiet.
 */
final class Progress implements AutoCloseable {
  private static final long PATIENCE_MS = 2000;
  private static final long EVERY_MS = 500;

  private final PrintWriter err;
  private final Timer timer;
  private volatile String phase = "";
  private volatile int shown;

  private Progress(PrintWriter err, boolean onTerminal) {
    this.err = err;
    this.timer = onTerminal ? new Timer("progress", true) : null;
    if (timer != null) {
      timer.schedule(
          new TimerTask() {
            @Override
            public void run() {
              show(phase + " ...");
            }
          },
          PATIENCE_MS,
          EVERY_MS);
    }
  }

  static Progress on(PrintWriter err) {
    return new Progress(err, System.console() != null);
  }

  /** Work that may fail to be written. */
  interface Work<T> {
    T done() throws IOException;
  }

  /**
   * Does the work.
   *
   * @throws TooLarge if the memory ran out, with what was being done
   */
  <T> T watch(Work<T> work) throws IOException {
    try {
      return work.done();
    } catch (IOException | RuntimeException | OutOfMemoryError fault) {
      if (TooLarge.isBehind(fault)) {
        throw new TooLarge(phase, fault);
      }
      throw fault;
    }
  }

  /** Names what is being done now. */
  void phase(String name) {
    phase = name;
  }

  private synchronized void show(String text) {
    err.print('\r' + text + " ".repeat(Math.max(0, shown - text.length())));
    err.flush();
    shown = text.length();
  }

  @Override
  public void close() {
    if (timer != null) {
      timer.cancel();
      if (shown > 0) {
        show("");
        err.print('\r');
        err.flush();
      }
    }
  }
}
