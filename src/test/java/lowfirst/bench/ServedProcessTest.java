package lowfirst.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import lowfirst.Figures;
import lowfirst.progress.Event;
import lowfirst.store.EventStore;
import lowfirst.store.StoreLocation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The verb as a process of its own, killed while devices tick. */
class ServedProcessTest {
  /** How often the process is killed; a long run sets the property higher. */
  private static final int KILLS = Integer.getInteger("lowfirst.kills", 12) / 3;

  private static final int DEVICES = 3;

  /** So often a store goes on after a kill; each check reads all of it, so it must not grow. */
  private static final int KILLS_OF_ONE_STORE = 10;

  @TempDir private Path folder;

  @Test
  void every_change_that_was_answered_before_a_kill_is_there_after_it() throws Exception {
    var random = new Random(Long.getLong("lowfirst.seed", 473L));
    long changes = 0;
    var answered = new ArrayList<String>();
    for (int kill = 0; kill < KILLS; kill++) {
      if (kill % KILLS_OF_ONE_STORE == 0) {
        answered.clear();
      }
      Path file = folder.resolve("progress-" + kill / KILLS_OF_ONE_STORE + ".db");
      Process process = start(file);
      try {
        Wire wire = new Wire(port(process));
        var before = new CountDownLatch(DEVICES);
        var devices = new ArrayList<Device>();
        for (int number = 0; number < DEVICES; number++) {
          var device = new Device(wire, "kill " + kill + " device " + number, before);
          device.start();
          devices.add(device);
        }
        assertTrue(before.await(30, TimeUnit.SECONDS), "no device got an answer");
        Thread.sleep(random.nextInt(150));
        process.toHandle().destroyForcibly();
        for (Device device : devices) {
          device.join(30_000);
          answered.addAll(device.answered);
          changes += device.answered.size();
        }
      } finally {
        process.destroyForcibly();
        assertTrue(process.waitFor(30, TimeUnit.SECONDS));
      }
      var there = new HashSet<String>();
      recorded(file).forEach(event -> assertTrue(there.add(((Event.Note) event).text())));
      answered.forEach(text -> assertTrue(there.contains(text), "lost: " + text));
    }
    assertTrue(changes >= KILLS, "fewer changes than kills");
    Figures.tell("kills", KILLS + " kills, " + changes + " changes answered, none lost");
  }

  @Test
  void a_second_bench_on_the_same_port_says_so_and_ends_with_status_3() throws Exception {
    Process first = start(folder.resolve("progress.db"));
    try {
      int port = port(first);
      Process second = command(folder.resolve("other.db"), port).redirectErrorStream(true).start();
      String words = new String(second.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertEquals(3, second.waitFor(), words);
      assertTrue(words.contains("port " + port + " is taken"), words);
    } finally {
      first.destroyForcibly().waitFor();
    }
  }

  /** Writes notes as fast as it can until the bench is gone. */
  private static final class Device extends Thread {
    private final Wire wire;
    private final String name;
    private final CountDownLatch first;
    private final List<String> answered = new ArrayList<>();

    Device(Wire wire, String name, CountDownLatch first) {
      this.wire = wire;
      this.name = name;
      this.first = first;
    }

    @Override
    public void run() {
      for (int number = 0; number < 10_000; number++) {
        String text = name + " note " + number;
        try {
          int status =
              wire.post(
                      "/note",
                      "action",
                      UUID.randomUUID().toString(),
                      "spot",
                      "R1 on driver-1",
                      "text",
                      text)
                  .status();
          assertEquals(303, status);
          answered.add(text);
          first.countDown();
        } catch (IOException | RuntimeException gone) {
          return;
        }
      }
    }
  }

  private static List<Event> recorded(Path file) {
    try (EventStore store = EventStore.open(StoreLocation.of(file), "bell-player")) {
      return store.events().stream().map(EventStore.Stored::event).toList();
    }
  }

  private static Process start(Path store) throws IOException {
    return command(store, 0).redirectError(ProcessBuilder.Redirect.DISCARD).start();
  }

  /** The native part of the database driver is unpacked beside the store, and goes with it. */
  private static ProcessBuilder command(Path store, int port) {
    return new ProcessBuilder(
        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
        "-XX:TieredStopAtLevel=1",
        "-Djava.io.tmpdir=" + store.getParent(),
        "-cp",
        System.getProperty("java.class.path"),
        "lowfirst.cli.Main",
        "bench",
        Path.of("sample-boms", "bell-player").toString(),
        "--port",
        Integer.toString(port),
        "--store",
        store.toString());
  }

  private static int port(Process process) throws IOException {
    // Not closed: the process goes on writing into it.
    var lines =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    String line = lines.readLine();
    assertTrue(line != null && line.startsWith("the bench is at "), String.valueOf(line));
    return URI.create(line.replace("the bench is at ", "")).getPort();
  }
}
