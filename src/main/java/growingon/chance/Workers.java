package growingon.chance;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Threads that do the same work side by side. */
final class Workers {
  private Workers() {}

  /** Lets so many threads work and waits for them; a fault of one is a fault of all. */
  static void run(int threads, Runnable work) {
    ExecutorService pool = Executors.newFixedThreadPool(threads, Workers::daemon);
    try {
      List<Future<?>> workers = new ArrayList<>();
      for (int i = 0; i < threads; i++) {
        workers.add(pool.submit(work));
      }
      for (Future<?> worker : workers) {
        worker.get();
      }
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while drawing", interrupted);
    } catch (ExecutionException fault) {
      throw new IllegalStateException(fault.getCause().getMessage(), fault.getCause());
    } finally {
      pool.shutdownNow();
    }
  }

  private static Thread daemon(Runnable task) {
    Thread thread = new Thread(task, "draws");
    thread.setDaemon(true);
    return thread;
  }
}
