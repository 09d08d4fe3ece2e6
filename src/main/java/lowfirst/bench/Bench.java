package lowfirst.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import lowfirst.assembly.AssemblyPlan;
import lowfirst.board.Kit;
import lowfirst.channel.LoadFindings;
import lowfirst.progress.Event;
import lowfirst.progress.Progress;
import lowfirst.sorting.SortPlan;
import lowfirst.store.EventStore;
import lowfirst.store.EventStore.Stored;
import lowfirst.store.StoreFailure;

/**
 * The kit on the bench: the plan, and what is recorded so far, kept up to date with what other
 * benches and commands record in the same store.
 */
final class Bench implements AutoCloseable {
  /** How often to look for what others recorded: two benches see each other within a second. */
  private static final long LOOK_MILLISECONDS = 250;

  private final Kit kit;
  private final SortPlan sorting;
  private final LoadFindings findings;
  private final AssemblyPlan plan;
  private final EventStore store;
  private final ScheduledExecutorService looking;
  private final Object change = new Object();
  private volatile Snapshot snapshot;
  private volatile boolean closed;

  /**
   * What was known at one moment.
   *
   * @param sequence of the newest event in it
   */
  record Snapshot(long sequence, List<Event> events, Progress progress) {}

  private Bench(Kit kit, AssemblyPlan plan, EventStore store) {
    this.kit = kit;
    this.sorting = SortPlan.of(kit);
    this.findings = LoadFindings.of(kit);
    this.plan = plan;
    this.store = store;
    this.snapshot = new Snapshot(0, List.of(), Progress.of(plan, List.of()));
    this.looking =
        Executors.newSingleThreadScheduledExecutor(
            work -> {
              var thread = new Thread(work, "bench-store");
              thread.setDaemon(true);
              return thread;
            });
  }

  static Bench open(Kit kit, AssemblyPlan plan, EventStore store) {
    var bench = new Bench(kit, plan, store);
    bench.look();
    bench.looking.scheduleWithFixedDelay(
        bench::lookPatiently, LOOK_MILLISECONDS, LOOK_MILLISECONDS, TimeUnit.MILLISECONDS);
    return bench;
  }

  Kit kit() {
    return kit;
  }

  /** Where the parts lie, and which can be mistaken. */
  SortPlan sorting() {
    return sorting;
  }

  /** What carries its load, and what does not. */
  LoadFindings findings() {
    return findings;
  }

  AssemblyPlan plan() {
    return plan;
  }

  Snapshot now() {
    return snapshot;
  }

  /** Records events; when it returns they are on the disk and in {@link #now()}. */
  void record(List<? extends Event> events) {
    events.forEach(store::append);
    look();
  }

  private void look() {
    synchronized (change) {
      Snapshot before = snapshot;
      List<Stored> newer = store.after(before.sequence());
      if (newer.isEmpty()) {
        return;
      }
      var events = new ArrayList<>(before.events());
      newer.forEach(stored -> events.add(stored.event()));
      snapshot =
          new Snapshot(
              newer.get(newer.size() - 1).sequence(),
              List.copyOf(events),
              Progress.of(plan, events));
      change.notifyAll();
    }
  }

  /** A store that can't be read now may be readable at the next look; a tick would say so. */
  private void lookPatiently() {
    try {
      look();
    } catch (StoreFailure unreadable) {
      return;
    }
  }

  /**
   * Waits until something newer than {@code seen} is known, at most {@code milliseconds}.
   *
   * @return the sequence of the newest event
   */
  long awaitNewer(long seen, long milliseconds) throws InterruptedException {
    long end = System.nanoTime() + milliseconds * 1_000_000;
    synchronized (change) {
      while (snapshot.sequence() <= seen && !closed) {
        long left = (end - System.nanoTime()) / 1_000_000;
        if (left <= 0) {
          break;
        }
        change.wait(left);
      }
      return snapshot.sequence();
    }
  }

  boolean isClosed() {
    return closed;
  }

  @Override
  public void close() {
    closed = true;
    looking.shutdownNow();
    synchronized (change) {
      change.notifyAll();
    }
    store.close();
  }
}
