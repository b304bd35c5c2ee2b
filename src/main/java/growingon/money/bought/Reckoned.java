package growingon.money.bought;

import growingon.money.Accounts;
import growingon.nursery.Scenario;
import growingon.project.Programme;
import growingon.project.Projector;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

/**
 * A plan reckoned: its accounts and what the lots bought within it are worth.
 *
 * @param accounts the accounts
 * @param join what the lots bought gain, joined to the plan's present value
 */
public record Reckoned(Accounts accounts, ValueJoin join) {
  private static final double HALF_A_CENT = 0.005;

  public Reckoned {
    double booked = accounts.presentValue();
    if (!(Math.abs(booked - join.presentValue()) <= HALF_A_CENT + 1e-9 * Math.abs(booked))) {
      throw new IllegalStateException(
          "the plan is worth %s by its accounts and %s by its lots"
              .formatted(booked, join.presentValue()));
    }
  }

  /** What each lot bought is worth, in the order of the scenario. */
  public List<BoughtLot> bought() {
    return join.bought();
  }

  /**
   * Projects a plan and books it; the lots bought are weighed meanwhile.
   *
   * @throws IllegalStateException if the balance of a lot or of the accounts does not hold, which
   *     is a fault of the program
   */
  public static Reckoned of(Scenario scenario) {
    Programme programme = Programme.of(scenario);
    CompletableFuture<ValueJoin> weighed =
        CompletableFuture.supplyAsync(() -> new Weighing(programme).weigh(), Reckoned::start);
    Accounts accounts = Accounts.of(Projector.project(programme));
    try {
      return new Reckoned(accounts, weighed.join());
    } catch (CompletionException fault) {
      throw new IllegalStateException(fault.getCause().getMessage(), fault.getCause());
    }
  }

  /** In a thread of its own: those that all share would be taken from the projection. */
  private static void start(Runnable work) {
    Thread thread = new Thread(work, "weighing");
    thread.setDaemon(true);
    thread.start();
  }
}
