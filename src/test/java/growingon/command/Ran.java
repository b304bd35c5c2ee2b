package growingon.command;

import java.io.PrintWriter;
import java.io.StringWriter;

/** What became of a command. */
record Ran(int code, String out, String err) {
  static Ran of(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Main.run(new PrintWriter(out), new PrintWriter(err), args);
    return new Ran(code, out.toString(), err.toString());
  }
}
