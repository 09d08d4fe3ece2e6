package lowfirst.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import lowfirst.Figures;
import lowfirst.board.Designator;
import lowfirst.board.Unit;
import lowfirst.progress.Event;
import lowfirst.progress.State;
import lowfirst.store.EventStore.Acknowledgement;
import lowfirst.store.EventStore.Stored;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a store promises, whatever database keeps it. */
abstract class EventStoreContract {
  /** How often the writing process is killed; a long run sets the property higher. */
  private static final int KILLS = Integer.getInteger("lowfirst.kills", 12);

  /** Where the processes unpack the native part of the database driver, so that it goes with it. */
  @TempDir private Path unpacked;

  private static final Unit UNIT = new Unit("driver", 1);

  /** A store that nothing was written to. */
  abstract StoreLocation fresh();

  static Event.Tick tick(String id) {
    return new Event.Tick(
        id,
        UNIT,
        List.of(Designator.of("R1"), Designator.of("R10"), Designator.of("R2")),
        State.SOLDERED,
        "Ada",
        Instant.parse("2026-03-01T18:00:00.123456789Z"),
        Optional.of("4.68 kΩ"),
        Optional.of("it's \"fine\"; DROP TABLE lowfirst_event\n"));
  }

  @Test
  void every_kind_of_event_comes_back_as_it_was() {
    List<Event> events =
        List.of(
            tick("1"),
            new Event.Undo("2", "1", "Ben", Instant.parse("2026-03-01T18:01:00Z")),
            new Event.Note("3", UNIT, List.of(), "", Instant.EPOCH, "µ ± °"),
            new Event.Substitution(
                "4", UNIT, List.of(Designator.of("D1")), "1N4004", "", "Ada", Instant.EPOCH),
            new Event.PowerReading(
                "5",
                UNIT,
                "5 V rail",
                Event.PowerReading.Outcome.PASSED,
                Optional.of("5.02 V"),
                "Ada",
                Instant.EPOCH));
    StoreLocation location = fresh();
    try (EventStore store = EventStore.open(location, "kit")) {
      events.forEach(event -> assertEquals(Acknowledgement.RECORDED, store.append(event)));
    }
    try (EventStore store = EventStore.open(location, "kit")) {
      assertEquals(events, store.events().stream().map(Stored::event).toList());
    }
  }

  @Test
  void the_same_id_is_recorded_once_and_the_first_stays() {
    try (EventStore store = EventStore.open(fresh(), "kit")) {
      store.append(tick("1"));
      assertEquals(
          Acknowledgement.ALREADY_THERE, store.append(new Event.Undo("1", "0", "", Instant.EPOCH)));
      store.append(tick("2"));
      assertEquals(List.of(new Stored(1, tick("1")), new Stored(2, tick("2"))), store.events());
    }
  }

  @Test
  void kits_in_one_store_do_not_see_each_other() {
    StoreLocation location = fresh();
    try (EventStore bells = EventStore.open(location, "bells");
        EventStore lamps = EventStore.open(location, "lamps")) {
      bells.append(tick("1"));
      lamps.append(tick("1"));
      lamps.append(tick("2"));
      assertEquals(1, bells.events().size());
      assertEquals(2, lamps.events().size());
    }
  }

  @Test
  void two_benches_on_one_store_see_what_is_new() {
    StoreLocation location = fresh();
    try (EventStore one = EventStore.open(location, "kit");
        EventStore two = EventStore.open(location, "kit")) {
      one.append(tick("1"));
      assertEquals(List.of(new Stored(1, tick("1"))), two.after(0));
      two.append(tick("2"));
      assertEquals(List.of(new Stored(2, tick("2"))), one.after(1));
    }
  }

  /** How many connections the benches of the crowd test share. */
  abstract int connectionsOfACrowd();

  @Test
  void many_benches_at_once_lose_nothing_and_double_nothing() throws Exception {
    int benches = 20;
    int ticks = 500;
    StoreLocation location = fresh();
    var stores = new ArrayList<EventStore>();
    for (int connection = 0; connection < connectionsOfACrowd(); connection++) {
      stores.add(EventStore.open(location, "kit"));
    }
    var work = new ArrayList<Callable<List<Long>>>();
    for (int bench = 0; bench < benches; bench++) {
      EventStore store = stores.get(bench % stores.size());
      String prefix = "bench-" + bench + "-";
      work.add(() -> timesOfTicks(store, prefix, ticks));
    }
    var nanoseconds = new ArrayList<Long>();
    var threads = Executors.newFixedThreadPool(benches);
    try {
      for (var done : threads.invokeAll(work, 300, TimeUnit.SECONDS)) {
        nanoseconds.addAll(done.get());
      }
    } finally {
      threads.shutdownNow();
      stores.forEach(EventStore::close);
    }
    nanoseconds.sort(null);
    Figures.tell(
        "a tick among 20 benches",
        "median %.1f ms, 99th percentile %.1f ms"
            .formatted(
                nanoseconds.get(nanoseconds.size() / 2) / 1e6,
                nanoseconds.get(nanoseconds.size() * 99 / 100) / 1e6));
    try (EventStore store = EventStore.open(location, "kit")) {
      List<Stored> stored = store.events();
      var ids = new HashSet<String>();
      stored.forEach(one -> assertTrue(ids.add(one.event().id()), one.event().id()));
      assertEquals(benches * ticks, ids.size());
      for (int i = 0; i < stored.size(); i++) {
        assertEquals(i + 1, stored.get(i).sequence());
      }
    }
  }

  /** Every seventh tick is sent twice, as a device does that got no answer in time. */
  private static List<Long> timesOfTicks(EventStore store, String prefix, int ticks) {
    var times = new ArrayList<Long>();
    long seen = 0;
    for (int number = 0; number < ticks; number++) {
      Event.Tick tick = tick(prefix + number);
      long start = System.nanoTime();
      store.append(tick);
      times.add(System.nanoTime() - start);
      if (number % 7 == 0) {
        assertEquals(Acknowledgement.ALREADY_THERE, store.append(tick));
      }
      if (number % 50 == 0) {
        // Reading in steps must never skip one: sequences become visible in order.
        for (Stored stored : store.after(seen)) {
          assertEquals(seen + 1, stored.sequence());
          seen = stored.sequence();
        }
      }
    }
    return times;
  }

  @Test
  void whatever_was_acknowledged_before_a_kill_is_there_and_the_next_tick_works() throws Exception {
    StoreLocation location = fresh();
    var random = new Random(Long.getLong("lowfirst.seed", 4680L));
    var acknowledged = new ArrayList<String>();
    for (int kill = 0; kill < KILLS; kill++) {
      acknowledged.addAll(ticksBeforeKill(location, "run-" + kill, random.nextInt(120)));
      try (EventStore store = EventStore.open(location, "kit")) {
        var there = new HashSet<String>();
        store.events().forEach(stored -> assertTrue(there.add(stored.event().id())));
        assertTrue(there.containsAll(acknowledged), "a tick was lost by kill " + kill);
        store.append(tick("after-kill-" + kill));
        acknowledged.add("after-kill-" + kill);
      }
    }
    assertTrue(acknowledged.size() > 2 * KILLS, "the kills came before any tick");
  }

  /** Starts a process that ticks, kills it some time after its first tick, gives what it told. */
  private List<String> ticksBeforeKill(StoreLocation location, String prefix, int milliseconds)
      throws Exception {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xshare:auto",
                "-XX:TieredStopAtLevel=1",
                "-Djava.io.tmpdir=" + unpacked,
                "-cp",
                System.getProperty("java.class.path"),
                TicksUntilKilled.class.getName(),
                location.file().map(Path::toString).orElse(location.url()),
                prefix,
                "100000")
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    var told = new ArrayList<String>();
    try (var lines =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      String first = lines.readLine();
      if (first != null) {
        told.add(first);
      }
      Thread.sleep(milliseconds);
      process.toHandle().destroyForcibly();
      lines.lines().filter(line -> line.endsWith(";")).forEach(told::add);
    }
    assertTrue(process.waitFor(30, TimeUnit.SECONDS));
    assertFalse(told.isEmpty(), "the process did not tick");
    return told.stream().map(line -> line.replace(";", "")).toList();
  }
}
