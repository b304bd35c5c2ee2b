package growingon.chance;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/** Processor time of all threads of an iteration, which a busy machine changes less than time. */
@State(Scope.Thread)
@AuxCounters(AuxCounters.Type.EVENTS)
public class Processor {
  /** Seconds of processor time, those of compiling and of collecting garbage among them. */
  public double seconds;

  private long begun;

  @Setup(Level.Iteration)
  public void begin() {
    begun = now();
  }

  @TearDown(Level.Iteration)
  public void end() {
    seconds = (now() - begun) / 1e9;
  }

  private static long now() {
    return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
        .getProcessCpuTime();
  }
}
