package growingon.chance;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import java.util.function.Supplier;

/** Threads that draw side by side. */
public final class Workers {
  private Workers() {}

  /**
   * Makes draws, each once, and waits for them; a fault of one is a fault of all.
   *
   * @param draws how many
   * @param threads how many threads draw
   * @param worker asked once by every thread for what makes a draw, given the draw's number
   * @param done told how many draws are done, from any thread
   */
  public static void draw(int draws, int threads, Supplier<IntConsumer> worker, IntConsumer done) {
    AtomicInteger next = new AtomicInteger();
    AtomicInteger finished = new AtomicInteger();
    run(
        threads,
        () -> {
          IntConsumer make = worker.get();
          for (int draw = next.getAndIncrement();
              draw < draws && !Thread.currentThread().isInterrupted();
              draw = next.getAndIncrement()) {
            make.accept(draw);
            done.accept(finished.incrementAndGet());
          }
        });
  }

  private static void run(int threads, Runnable work) {
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
