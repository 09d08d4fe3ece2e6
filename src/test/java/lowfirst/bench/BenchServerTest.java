package lowfirst.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import lowfirst.Figures;
import lowfirst.bench.Wire.Answer;
import lowfirst.progress.Event;
import lowfirst.store.EventStore;
import lowfirst.store.EventStore.Stored;
import lowfirst.store.StoreLocation;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BenchServerTest {
  @TempDir private Path folder;
  private Path file;
  private BenchServer server;
  private Wire wire;

  @BeforeEach
  void serve() throws IOException {
    file = folder.resolve("progress.db");
    server = BenchKit.serve(BenchKit.SMALL, file, 0);
    wire = Wire.to(server);
  }

  @AfterEach
  void stop() {
    server.close();
  }

  // --- the work ---

  @Test
  void the_first_page_leads_to_the_lowest_part() throws IOException {
    Answer answer = wire.get("/");
    assertEquals(303, answer.status());
    assertEquals("/step/1", answer.header("Location"));
    String page = wire.get("/step/1").body();
    assertTrue(page.contains("Seat 2 × 1N4148 diode"), page);
    assertTrue(page.contains("1 on each of 2 boards"), page);
  }

  @Test
  void a_number_is_not_parted_from_its_unit_where_people_read_and_nothing_else_is_changed()
      throws IOException {
    String page = wire.get("/step/2").body();
    String limits = page.substring(page.indexOf("<p class=\"limits\">"));
    limits = limits.substring(0, limits.indexOf("</p>"));
    assertTrue(limits.contains("\u00a0kΩ"), limits);
    assertFalse(limits.matches("(?s).*\\d kΩ.*"), limits);
    assertFalse(page.matches("(?s).*=\"[^\"]*\u00a0.*"), "an attribute was changed");
  }

  @Test
  void a_tick_is_recorded_and_leads_on_and_says_what_was_done() throws IOException {
    Answer answer = tick("/step/1", "SEATED", "D1 on driver-1", "D1 on driver-2");
    assertEquals(303, answer.status());
    assertTrue(answer.header("Location").startsWith("/step/2?did="), answer.head());
    String page = wire.get(answer.header("Location")).body();
    assertTrue(page.contains("Recorded – seated: D1 on driver-1 and driver-2"), page);
    assertTrue(page.contains("Bag A1: 1 should be left then; none are needed later"), page);
    assertEquals(2, recorded().size());
  }

  @Test
  void sending_the_same_form_again_records_nothing_twice() throws IOException {
    String action = UUID.randomUUID().toString();
    for (int again = 0; again < 3; again++) {
      assertEquals(
          303,
          wire.post(
                  "/tick",
                  "action",
                  action,
                  "state",
                  "SEATED",
                  "from",
                  "step",
                  "spot",
                  "D1 on driver-1")
              .status());
    }
    assertEquals(1, recorded().size());
  }

  /** Whatever is chosen, a printed page is light. */
  @ParameterizedTest
  @CsvSource({
    "auto, screen and (prefers-color-scheme: dark)",
    "dark, screen",
    "light, not all",
    "pink, screen and (prefers-color-scheme: dark)",
  })
  void the_dark_colours_hold_where_they_are_chosen_and_never_on_paper(String theme, String media)
      throws IOException {
    Answer chosen = wire.post("/device", "theme", theme);
    String cookie = chosen.header("Set-Cookie").replaceFirst(";.*", "");
    Answer page =
        wire.send("GET /job HTTP/1.1", List.of("Host: " + wire.host(), "Cookie: " + cookie), "");
    assertTrue(page.body().contains("href=\"/dark.css\" media=\"" + media + "\""), page.body());
  }

  @Test
  void undo_takes_back_what_the_page_showed() throws IOException {
    tick("/step/1", "SEATED", "D1 on driver-1", "D1 on driver-2");
    List<Event> ticks = recorded();
    Answer answer =
        wire.post(
            "/undo",
            "action",
            UUID.randomUUID().toString(),
            "event",
            ticks.get(0).id(),
            "event",
            ticks.get(1).id());
    String page = wire.get(answer.header("Location")).body();
    assertTrue(page.contains("Undone: seated: D1 on driver-1 and driver-2"), page);
    assertTrue(page.contains("Step 1 of "), page);
    assertEquals(4, recorded().size());
  }

  @Test
  void setting_aside_keeps_the_reason_and_lets_the_work_go_on() throws IOException {
    wire.post(
        "/tick",
        "action",
        UUID.randomUUID().toString(),
        "state",
        "SET_ASIDE",
        "spot",
        "D1 on driver-1",
        "reason",
        "meter rejects it");
    assertTrue(wire.get("/job").body().contains("meter rejects it"));
    String page = wire.get("/spot/driver-1/D1").body();
    assertTrue(page.contains("D1 on driver-1: set aside, meter rejects it"), page);
  }

  @Test
  void a_damaged_part_is_gone_from_the_bag_and_one_that_was_missing_is_not() throws IOException {
    move("R1 on driver-1", "SET_ASIDE", "not in the bag");
    assertBag("2 should be left then; 1 is needed later");
    move("R2 on driver-1", "SET_ASIDE", "part damaged");
    assertBag("2 should be left then; 2 are needed later");
    move("R1 on driver-1", "SEATED", "");
    move("R2 on driver-1", "SEATED", "");
    assertBag("0 should be left then; none are needed later");
  }

  /** Five came; three are damaged and two of these are replaced: none is left for the last. */
  @Test
  void a_bag_that_runs_short_says_how_many_are_missing() throws IOException {
    move("R1 on driver-1", "SET_ASIDE", "part damaged");
    move("R2 on driver-1", "SET_ASIDE", "part damaged");
    move("R1 on driver-2", "SET_ASIDE", "part damaged");
    move("R1 on driver-1", "SEATED", "");
    move("R2 on driver-1", "SEATED", "");
    assertBag("1 too few; 1 is needed later");
  }

  private void move(String spot, String state, String reason) throws IOException {
    String action = UUID.randomUUID().toString();
    wire.post(
        "/tick", "action", action, "from", "spot", "state", state, "spot", spot, "reason", reason);
  }

  private void assertBag(String words) throws IOException {
    String page = wire.get("/step/2").body();
    assertTrue(page.contains("Bag A1: " + words), page);
  }

  @Test
  void a_step_page_only_moves_forward_a_part_page_also_back() throws IOException {
    tick("/step/1", "SOLDERED", "D1 on driver-1");
    tick("/step/1", "SEATED", "D1 on driver-1");
    assertEquals(1, recorded().size());
    wire.post(
        "/tick",
        "action",
        UUID.randomUUID().toString(),
        "from",
        "spot",
        "state",
        "TO_DO",
        "spot",
        "D1 on driver-1");
    assertTrue(wire.get("/spot/driver-1/D1").body().contains("D1 on driver-1: to do"));
  }

  @Test
  void notes_substitutes_and_first_power_readings_are_kept() throws IOException {
    wire.post(
        "/note",
        "action",
        UUID.randomUUID().toString(),
        "spot",
        "D1 on driver-1",
        "text",
        "faint band");
    wire.post(
        "/substitute",
        "action",
        UUID.randomUUID().toString(),
        "spot",
        "D1 on driver-1",
        "fitted",
        "1N914",
        "reason",
        "same ratings");
    String page = wire.get("/spot/driver-1/D1").body();
    assertTrue(page.contains("note on D1 on driver-1: faint band"), page);
    assertTrue(page.contains("fitted 1N914 in place of the BOM"), page);
    assertTrue(page.contains("same ratings; judged: "), page);
    String power = wire.get("/power/driver-2").body();
    assertTrue(power.contains("First power of driver-2"), power);
    Answer answer =
        wire.post(
            "/power",
            "action",
            UUID.randomUUID().toString(),
            "unit",
            "driver-2",
            "check",
            "rail check",
            "outcome",
            "PASSED",
            "measured",
            "5.02 V");
    assertEquals(303, answer.status());
    assertTrue(recorded().get(2) instanceof Event.PowerReading);
  }

  @ParameterizedTest
  @ValueSource(strings = {"d1", "D1", "1N4148", "4148", "step 1", "http://192.168.1.9:7460/step/1"})
  void what_is_typed_or_scanned_lands_on_its_step(String asked) throws IOException {
    Answer answer = wire.get("/find?" + Wire.form("q", asked));
    assertEquals("/step/1", answer.header("Location"), answer.body());
  }

  @ParameterizedTest
  @ValueSource(strings = {"yellow violet red gold", "yellow violet black brown brown", "4k7"})
  void a_marking_lands_on_the_part_that_carries_it(String asked) throws IOException {
    assertEquals("/step/2", wire.get("/find?" + Wire.form("q", asked)).header("Location"));
  }

  @Test
  void a_reading_is_judged_at_once() throws IOException {
    assertTrue(wire.get("/meter?step=2&measured=4.70k").body().startsWith("ACCEPT\n"));
    assertTrue(wire.get("/meter?step=2&measured=5.6k").body().startsWith("REJECT\n"));
    assertTrue(wire.get("/meter?step=2&measured=wet").body().startsWith("UNREAD\n"));
  }

  @Test
  void another_part_is_judged_at_once_as_the_swap_command_judges_it() throws IOException {
    String spot = Wire.form("spot", "R1 on driver-1");
    assertTrue(wire.get("/fits?" + spot + "&fitted=10k").body().startsWith("DOES_NOT_FIT\n"));
    assertFalse(wire.get("/fits?" + spot + "&fitted=4k7").body().startsWith("DOES_NOT_FIT\n"));
    assertEquals(404, wire.get("/fits?spot=R9&fitted=4k7").status());
  }

  @Test
  void another_bench_on_the_same_store_is_seen_within_a_second() throws Exception {
    var heard = Executors.newSingleThreadExecutor();
    try (var other = BenchKit.serve(BenchKit.SMALL, file, 0);
        var socket = new java.net.Socket(java.net.InetAddress.getLoopbackAddress(), wire.port())) {
      socket.setSoTimeout(5_000);
      socket
          .getOutputStream()
          .write(
              ("GET /news?seen=0 HTTP/1.1\r\nHost: " + wire.host() + "\r\n\r\n")
                  .getBytes(StandardCharsets.UTF_8));
      var lines =
          new java.io.BufferedReader(
              new java.io.InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
      var first =
          heard.submit(
              () -> lines.lines().filter(line -> line.startsWith("data: ")).findFirst().orElse(""));
      Thread.sleep(100);
      long start = System.nanoTime();
      Wire.to(other)
          .post(
              "/tick",
              "action",
              UUID.randomUUID().toString(),
              "state",
              "SEATED",
              "spot",
              "D1 on driver-1");
      assertEquals("data: 1", first.get(5, TimeUnit.SECONDS));
      long milliseconds = (System.nanoTime() - start) / 1_000_000;
      assertTrue(milliseconds < 5_000, milliseconds + " ms");
    } finally {
      heard.shutdownNow();
    }
  }

  @Test
  void many_devices_at_once_lose_nothing_and_double_nothing() throws Exception {
    int devices = 20;
    int each = 40;
    var nanoseconds = new ArrayList<Long>();
    var work = new ArrayList<Callable<List<Long>>>();
    for (int device = 0; device < devices; device++) {
      String who = "device " + device;
      work.add(() -> notes(who, each));
    }
    var threads = Executors.newFixedThreadPool(devices);
    try {
      for (var done : threads.invokeAll(work, 120, TimeUnit.SECONDS)) {
        nanoseconds.addAll(done.get());
      }
    } finally {
      threads.shutdownNow();
    }
    nanoseconds.sort(null);
    Figures.tell(
        "a change among 20 devices",
        "median %.1f ms, 99th percentile %.1f ms"
            .formatted(
                nanoseconds.get(nanoseconds.size() / 2) / 1e6,
                nanoseconds.get(nanoseconds.size() * 99 / 100) / 1e6));
    List<Event> all = recorded();
    assertEquals((long) devices * each, all.size());
    assertEquals((long) devices * each, all.stream().map(Event::id).distinct().count());
  }

  private List<Long> notes(String who, int count) throws IOException {
    var times = new ArrayList<Long>();
    for (int number = 0; number < count; number++) {
      String action = UUID.randomUUID().toString();
      String[] form = {"action", action, "spot", "R1 on driver-1", "text", who + " " + number};
      long start = System.nanoTime();
      assertEquals(303, wire.post("/note", form).status());
      times.add(System.nanoTime() - start);
      if (number % 5 == 0) {
        assertEquals(303, wire.post("/note", form).status());
      }
    }
    return times;
  }

  // --- who may ask, and for what ---

  @ParameterizedTest
  @ValueSource(
      strings = {"evil.example", "evil.example:%d", "127.0.0.1", "127.0.0.1.evil.example:%d", ""})
  void a_name_that_was_not_announced_is_not_answered(String host) throws IOException {
    Answer answer =
        wire.send("GET /step/1 HTTP/1.1", List.of("Host: " + host.formatted(wire.port())), "");
    assertTrue(answer.status() == 421 || answer.status() == 400, answer.head());
    assertFalse(answer.body().contains("1N4148"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Origin: http://evil.example",
        "Origin: null",
        "Origin: https://127.0.0.1:%d",
        "X: y"
      })
  void a_change_from_elsewhere_is_refused_and_records_nothing(String header) throws IOException {
    Answer answer =
        wire.send(
            "POST /tick HTTP/1.1",
            List.of(
                "Host: " + wire.host(),
                header.formatted(wire.port()),
                "Content-Type: application/x-www-form-urlencoded"),
            Wire.form(
                "action",
                UUID.randomUUID().toString(),
                "state",
                "SEATED",
                "spot",
                "D1 on driver-1"));
    assertEquals(403, answer.status());
    assertEquals(List.of(), recorded());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/",
        "/step/1",
        "/job",
        "/find",
        "/find?q=zzz",
        "/power/driver-1",
        "/device",
        "/spot/driver-1/R1",
        "/bench.css",
        "/dark.css",
        "/bench.js",
        "/icon.svg",
        "/nowhere",
        "/meter?step=2&measured=1"
      })
  void every_answer_keeps_foreign_content_out(String path) throws IOException {
    Answer answer = wire.get(path);
    String policy = answer.header("Content-Security-Policy");
    assertTrue(policy.contains("default-src 'none'"), answer.head());
    assertFalse(policy.contains("unsafe"), policy);
    assertEquals("nosniff", answer.header("X-Content-Type-Options"));
    assertFalse(answer.body().contains("<script>"), path);
    assertFalse(answer.body().matches("(?s).*<[a-z][^>]* (style|on[a-z]+)=.*"), path);
    assertFalse(answer.body().matches("(?s).*(src|href)=\"(https?:)?//.*"), path);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"/step/1", "/step/2", "/step/3", "/job", "/find?q=zz", "/spot/driver-1/K1"})
  void texts_of_the_tables_stay_texts(String path) throws IOException {
    String page = wire.get(path).body();
    assertFalse(page.contains("<img"), page);
    assertFalse(page.contains("<b>bold"), page);
    assertFalse(page.contains("\" onclick"), page);
    assertTrue(page.contains("Lamps &lt;b&gt;bold&lt;/b&gt;"), page);
  }

  @Test
  void what_was_typed_stays_text() throws IOException {
    String nasty = "\"><script>alert(1)</script>";
    wire.post(
        "/note", "action", UUID.randomUUID().toString(), "spot", "R1 on driver-1", "text", nasty);
    for (String path : List.of("/spot/driver-1/R1", "/find?" + Wire.form("q", nasty))) {
      assertFalse(wire.get(path).body().contains("<script>alert"), path);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/../../../../etc/passwd",
        "/%2e%2e/%2e%2e/etc/passwd",
        "/bench.css/../../../pom.xml",
        "/..%2f..%2fpom.xml",
        "/page/bench.css",
        "//etc/passwd",
        "/step/%00",
        "/spot/%ff/x",
        "/step/1/2"
      })
  void no_address_leads_out_of_the_pages(String path) throws IOException {
    Answer answer = wire.get(path);
    assertTrue(answer.status() == 404 || answer.status() == 400, path + ": " + answer.head());
    assertFalse(answer.body().contains("root:"), path);
  }

  @Test
  void sizes_are_bounded_and_other_methods_refused() throws IOException {
    assertEquals(413, wire.post("/note", "text", "x".repeat(70_000)).status());
    assertEquals(414, wire.get("/find?q=" + "x".repeat(5_000)).status());
    List<String> host = List.of("Host: " + wire.host(), "Origin: http://" + wire.host());
    assertEquals(405, wire.send("DELETE /step/1 HTTP/1.1", host, "").status());
    assertEquals(405, wire.send("PUT /step/1 HTTP/1.1", host, "x").status());
    var json = new ArrayList<>(host);
    json.add("Content-Type: application/json");
    assertEquals(415, wire.send("POST /tick HTTP/1.1", json, "{}").status());
  }

  @Test
  void a_form_that_is_wrong_is_told_and_records_nothing() throws IOException {
    String action = UUID.randomUUID().toString();
    for (String[] form :
        List.of(
            new String[] {"state", "SEATED", "spot", "D1 on driver-1"},
            new String[] {"action", action, "state", "MELTED", "spot", "D1 on driver-1"},
            new String[] {"action", action, "state", "SEATED", "spot", "D9 on driver-1"},
            new String[] {"action", action, "state", "SEATED"})) {
      assertEquals(400, wire.post("/tick", form).status());
    }
    assertEquals(400, wire.post("/note", "action", action, "spot", "R1 on driver-1").status());
    assertEquals(List.of(), recorded());
  }

  @Test
  void a_store_that_was_taken_away_acknowledges_nothing() throws IOException {
    Files.delete(file);
    Answer answer = tick("/step/1", "SEATED", "D1 on driver-1");
    assertEquals(503, answer.status());
    assertTrue(answer.body().contains("moved or deleted"), answer.body());
  }

  private Answer tick(String page, String state, String... spots) throws IOException {
    var form =
        new ArrayList<>(
            List.of("action", Wire.action(wire.get(page).body()), "from", "step", "state", state));
    for (String spot : spots) {
      form.add("spot");
      form.add(spot);
    }
    return wire.post("/tick", form.toArray(String[]::new));
  }

  private List<Event> recorded() {
    try (EventStore store = EventStore.open(StoreLocation.of(file), "kit")) {
      return store.events().stream().map(Stored::event).toList();
    }
  }
}
