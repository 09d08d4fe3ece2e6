package lowfirst.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import lowfirst.assembly.AssemblyOptions;
import lowfirst.assembly.AssemblyOrder;
import lowfirst.board.Kit;
import lowfirst.progress.Event;
import lowfirst.progress.Progress;
import lowfirst.progress.State;
import lowfirst.store.EventStore;
import lowfirst.store.EventStore.Stored;
import lowfirst.store.StoreLocation;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page in a real browser; pictures of it are left in {@code target/bench-pictures}. */
class BrowserTest {
  private static final Path PICTURES = Path.of("target", "bench-pictures");
  private static final Kit SAMPLE = BenchKit.sample();

  private static Browser browser;

  @TempDir private Path folder;
  private Path file;

  @BeforeAll
  static void open() throws Exception {
    if (Browser.driver().isEmpty()) {
      boolean required =
          Optional.ofNullable(System.getenv("LOWFIRST_BROWSER"))
              .filter(Predicate.isEqual("required"))
              .isPresent();
      assertTrue(!required, "LOWFIRST_BROWSER=required, but chromedriver is not on the PATH");
      Assumptions.abort(
          "chromedriver is not on the PATH: the page is NOT tested in a browser in this run");
    }
    browser = Browser.open(390, 844);
  }

  @AfterAll
  static void close() throws IOException {
    if (browser != null) {
      browser.close();
    }
  }

  @BeforeEach
  void phone() throws Exception {
    file = folder.resolve("progress.db");
    browser.size(390, 844);
  }

  @Test
  void the_whole_sample_kit_is_built_with_one_key() throws Exception {
    browser.size(1180, 820);
    try (BenchServer server = BenchKit.serve(SAMPLE, file, 0)) {
      browser.go(address(server, "/"));
      int presses = 0;
      while (browser.text("h1").matches("(?s)(Seat|Solder|Inspect|Plug in) .*")) {
        long before = sequence();
        browser.type(Browser.ENTER);
        browser.await("a new entry after " + before, () -> sequence() > before);
        presses++;
        assertTrue(presses < 1000, browser.text("h1"));
      }
      assertEquals("The whole job", browser.text("h1"));
      Progress progress = Progress.of(AssemblyOrder.of(SAMPLE, AssemblyOptions.USUAL), recorded());
      progress
          .units()
          .forEach(
              unit ->
                  assertEquals(
                      progress.tally(unit).total(), progress.tally(unit).in(State.INSPECTED)));
      browser.screenshot(PICTURES.resolve("finished.png"));
    }
  }

  private static long sequence() throws Exception {
    return browser.run("return Number(document.body.dataset.sequence)").getAsLong();
  }

  @Test
  void an_automated_checker_finds_nothing_against_wcag_on_any_page_light_or_dark()
      throws Exception {
    try (BenchServer server = BenchKit.serve(SAMPLE, file, 0)) {
      Wire.to(server)
          .post(
              "/tick",
              "action",
              java.util.UUID.randomUUID().toString(),
              "state",
              "SET_ASIDE",
              "spot",
              "D1 on controller-1",
              "reason",
              "part damaged");
      for (int[] size : List.of(new int[] {390, 844}, new int[] {1180, 820})) {
        browser.size(size[0], size[1]);
        for (String page :
            List.of(
                "/step/2",
                "/step/4",
                "/step/59",
                "/step/59?turned=1&close=1",
                "/job",
                "/find?q=zzz",
                "/find?q=resistor",
                "/spot/controller-1/D1",
                "/power/driver-1",
                "/device",
                "/nowhere")) {
          browser.go(address(server, page));
          for (String theme : List.of("light", "dark")) {
            browser.run(
                "document.getElementById('dark').media = arguments[0]",
                theme.equals("dark") ? "screen" : "not all");
            assertEquals("", violations(), page + " in " + theme + " at " + size[0]);
            browser.screenshot(
                PICTURES.resolve(
                    (size[0] + page).replaceAll("[^A-Za-z0-9]+", "-") + "-" + theme + ".png"));
          }
        }
      }
    }
  }

  @Test
  void every_control_is_large_enough_for_a_thumb_and_nothing_sticks_out() throws Exception {
    try (BenchServer server = BenchKit.serve(SAMPLE, file, 0)) {
      for (String page : List.of("/step/4", "/step/59", "/job", "/power/driver-1", "/device")) {
        browser.go(address(server, page));
        assertEquals(
            "",
            browser
                .run(
                    "return [...document.querySelectorAll('a, button, summary, input, select')]"
                        + ".filter(e => e.offsetParent && e.type !== 'hidden'"
                        + " && !e.classList.contains('skip'))"
                        + ".map(e => [e, e.getBoundingClientRect()])"
                        + ".filter(([e, r]) => r.height < 48 || r.width < 44)"
                        + ".map(([e, r]) => e.outerHTML + ' ' + r.width + 'x' + r.height).join('\\n')")
                .getAsString(),
            page);
        assertEquals(
            390,
            browser.run("return document.documentElement.scrollWidth").getAsInt(),
            page + " is wider than the screen");
      }
    }
  }

  @Test
  void every_action_of_a_step_has_a_key() throws Exception {
    try (BenchServer server = BenchKit.serve(SAMPLE, file, 0)) {
      browser.go(address(server, "/step/3"));
      browser.type("2");
      browser.await("soldered", () -> browser.text("#said").contains("soldered"));
      browser.type("u");
      browser.await("undone", () -> browser.text("#said").startsWith("Undone"));
      browser.go(address(server, "/step/3"));
      browser.type("m");
      browser.type("680");
      browser.await("a verdict", () -> browser.text("#verdict").startsWith("✓ accept"));
      browser.type(Browser.ENTER);
      browser.type("1");
      browser.await("seated", () -> browser.text("#said").contains("seated"));
      assertEquals(
          Optional.of("680"),
          recorded().stream()
              .filter(Event.Tick.class::isInstance)
              .map(Event.Tick.class::cast)
              .reduce((a, b) -> b)
              .orElseThrow()
              .measured());
      browser.go(address(server, "/step/4"));
      browser.type("4");
      browser.screenshot(PICTURES.resolve("390-set-aside.png"));
      browser.type(Browser.ENTER);
      browser.await("set aside", () -> browser.text("#said").contains("set aside"));
      browser.go(address(server, "/step/4"));
      browser.type(Browser.RIGHT);
      browser.await("the next step", () -> path().equals("/step/5"));
      browser.type("t");
      browser.await("the other side", () -> browser.text(".view").contains("Solder side"));
      browser.type("f");
      browser.await("find", () -> path().equals("/find"));
      browser.type("R12 on driver-1" + Browser.ENTER);
      browser.await(
          "what was found", () -> !path().equals("/find") || browser.text(".hits").contains("R12"));
    }
  }

  @Test
  void single_keys_can_be_switched_off_and_the_foot_switch_still_works() throws Exception {
    try (BenchServer server = BenchKit.serve(SAMPLE, file, 0)) {
      browser.go(address(server, "/device"));
      browser.run("document.getElementById('keys').value = 'off'");
      browser.run("document.getElementById('pedal').focus()");
      browser.type("b");
      browser.click("form button");
      browser.await("kept", () -> browser.text("#said").contains("Kept"));
      browser.go(address(server, "/step/1"));
      browser.type("2");
      Thread.sleep(300);
      assertEquals(List.of(), recorded());
      browser.type("b");
      browser.await("seated", () -> browser.text("#said").contains("seated"));
      browser.cdp("Network.clearBrowserCookies", java.util.Map.of());
    }
  }

  @Test
  void two_devices_see_each_other_and_what_is_being_typed_is_left_alone() throws Exception {
    try (BenchServer server = BenchKit.serve(SAMPLE, file, 0);
        Browser other = Browser.open(1180, 820)) {
      browser.go(address(server, "/step/1"));
      other.go(address(server, "/step/1"));
      other.type("1");
      browser.await("the other's tick", () -> browser.text("h1").startsWith("Solder 5"));
      browser.go(address(server, "/step/3"));
      browser.type("m");
      browser.type("12");
      other.go(address(server, "/step/2"));
      other.type("1");
      other.await("recorded", () -> other.text("#said").contains("seated"));
      Thread.sleep(700);
      assertEquals(
          "12", browser.run("return document.getElementById('reading').value").getAsString());
    }
  }

  @Test
  void a_tick_made_while_the_bench_is_away_is_kept_and_recorded_once_when_it_is_back()
      throws Exception {
    BenchServer first = BenchKit.serve(SAMPLE, file, 0);
    int port = first.addresses().get(0).getPort();
    browser.go(address(first, "/step/1"));
    first.close();
    browser.type("1");
    browser.await(
        "the warning", () -> browser.text("#waiting").contains("Not recorded yet: 1 entry"));
    browser.screenshot(PICTURES.resolve("390-waiting.png"));
    assertEquals(List.of(), recorded());
    try (BenchServer again = BenchKit.serve(SAMPLE, file, port)) {
      browser.await("the page going on", () -> browser.text("#said").contains("seated"));
      assertEquals("", browser.text("#waiting"));
      assertEquals(1, recorded().size());
      assertTrue(again.addresses().get(0).getPort() == port);
    }
  }

  @Test
  void without_script_the_forms_alone_do_the_work() throws Exception {
    browser.cdp("Emulation.setScriptExecutionDisabled", java.util.Map.of("value", true));
    try (BenchServer server = BenchKit.serve(SAMPLE, file, 0)) {
      browser.go(address(server, "/step/1"));
      browser.click("#to-SEATED");
      browser.await("the tick", () -> recorded().size() == 1);
    } finally {
      browser.cdp("Emulation.setScriptExecutionDisabled", java.util.Map.of("value", false));
    }
  }

  private String path() throws Exception {
    return browser.run("return location.pathname").getAsString();
  }

  /** What the checker finds against WCAG 2.2 A and AA, one line each. */
  private static String violations() throws Exception {
    browser.run(checker());
    JsonElement found =
        browser.runAsync(
            "const done = arguments[arguments.length - 1];"
                + "axe.run(document, {runOnly: ['wcag2a','wcag2aa','wcag21a','wcag21aa','wcag22aa']})"
                + ".then(r => done(r.violations.map(v => v.id + ': ' + v.help + ': '"
                + " + v.nodes.map(n => n.html + ' ' + n.failureSummary).join(' | ')).join('\\n')));");
    return found.getAsString();
  }

  private static String checker() throws IOException {
    try (InputStream script = BrowserTest.class.getResourceAsStream("/axe.min.js")) {
      return new String(script.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static String address(BenchServer server, String path) {
    URI base = server.addresses().get(0);
    return base.resolve(path).toString();
  }

  private List<Event> recorded() {
    try (EventStore store = EventStore.open(StoreLocation.of(file), "kit")) {
      return store.events().stream().map(Stored::event).toList();
    }
  }
}
