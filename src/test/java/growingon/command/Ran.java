package growingon.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;

/** What became of a command. */
record Ran(int code, String out, String err) {
  static Ran of(String... args) {
    return on(LocalDate.now(), args);
  }

  /** A command given on a day. */
  static Ran on(LocalDate day, String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    GrowingOn program = new GrowingOn(clock(day), stage -> {});
    int code = Main.run(program, new PrintWriter(out), new PrintWriter(err), args);
    return new Ran(code, out.toString(), err.toString());
  }

  /** A clock that stands at noon of a day. */
  static Clock clock(LocalDate day) {
    ZoneId zone = ZoneId.systemDefault();
    return Clock.fixed(day.atTime(12, 0).atZone(zone).toInstant(), zone);
  }
}
