package lowfirst.bench;

import com.google.gson.Gson;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A real browser without a screen, driven by the W3C WebDriver protocol. */
final class Browser implements AutoCloseable {
  private static final Gson GSON = new Gson();
  private static final Duration PATIENCE = Duration.ofSeconds(20);

  /** The key codes of WebDriver, 17.4.2. */
  static final String ENTER = "\uE007";

  static final String TAB = "\uE004";
  static final String ESCAPE = "\uE00C";
  static final String RIGHT = "\uE014";

  private final HttpClient http = HttpClient.newHttpClient();
  private final Process driver;
  private final String session;

  private Browser(Process driver, String session) {
    this.driver = driver;
    this.session = session;
  }

  /** The driver on this computer; empty when there is none. */
  static Optional<Path> driver() {
    return Stream.of(System.getenv("PATH").split(":"))
        .map(folder -> Path.of(folder, "chromedriver"))
        .filter(Files::isExecutable)
        .findFirst();
  }

  static Browser open(int width, int height) throws IOException, InterruptedException {
    int port;
    try (ServerSocket free = new ServerSocket(0)) {
      port = free.getLocalPort();
    }
    Process driver =
        new ProcessBuilder(driver().orElseThrow().toString(), "--port=" + port, "--silent")
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    String base = "http://127.0.0.1:" + port;
    var starting = new Browser(driver, base);
    try {
      starting.awaitReady();
      JsonObject answer =
          starting
              .send("POST", "/session", Map.of("capabilities", Map.of("alwaysMatch", options())))
              .getAsJsonObject();
      var browser = new Browser(driver, base + "/session/" + answer.get("sessionId").getAsString());
      browser.size(width, height);
      return browser;
    } catch (IOException | InterruptedException | RuntimeException failure) {
      starting.end();
      throw failure;
    }
  }

  private static Map<String, Object> options() {
    return Map.of(
        "goog:chromeOptions",
        Map.of(
            "args",
            List.of(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-dev-shm-usage",
                "--hide-scrollbars",
                "--disable-background-networking")));
  }

  private void awaitReady() throws InterruptedException, IOException {
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (true) {
      try {
        if (send("GET", "/status", Map.of()).getAsJsonObject().get("ready").getAsBoolean()) {
          return;
        }
      } catch (IOException notYet) {
        if (System.nanoTime() > end) {
          throw notYet;
        }
      }
      Thread.sleep(50);
    }
  }

  void size(int width, int height) throws IOException, InterruptedException {
    cdp(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
  }

  JsonElement cdp(String command, Map<String, Object> parameters)
      throws IOException, InterruptedException {
    return send("POST", "/goog/cdp/execute", Map.of("cmd", command, "params", parameters));
  }

  void go(String url) throws IOException, InterruptedException {
    send("POST", "/url", Map.of("url", url));
  }

  /** Runs a script in the page; its result as JSON. */
  JsonElement run(String script, Object... arguments) throws IOException, InterruptedException {
    return send("POST", "/execute/sync", Map.of("script", script, "args", List.of(arguments)));
  }

  JsonElement runAsync(String script) throws IOException, InterruptedException {
    return send("POST", "/execute/async", Map.of("script", script, "args", List.of()));
  }

  String text(String selector) throws IOException, InterruptedException {
    JsonElement found =
        run(
            "const e = document.querySelector(arguments[0]); return e ? e.innerText : ''",
            selector);
    return found.getAsString();
  }

  void click(String selector) throws IOException, InterruptedException {
    String element =
        send("POST", "/element", Map.of("using", "css selector", "value", selector))
            .getAsJsonObject()
            .entrySet()
            .iterator()
            .next()
            .getValue()
            .getAsString();
    send("POST", "/element/" + element + "/click", Map.of());
  }

  /** Types into whatever has the focus. */
  void type(String keys) throws IOException, InterruptedException {
    var actions = new java.util.ArrayList<Map<String, String>>();
    keys.codePoints()
        .mapToObj(Character::toString)
        .forEach(
            key -> {
              actions.add(Map.of("type", "keyDown", "value", key));
              actions.add(Map.of("type", "keyUp", "value", key));
            });
    send(
        "POST",
        "/actions",
        Map.of("actions", List.of(Map.of("type", "key", "id", "keys", "actions", actions))));
  }

  /** Waits until a page says what it should. */
  void await(String what, Check check) throws Exception {
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (!check.holds()) {
      if (System.nanoTime() > end) {
        throw new AssertionError("waited in vain for: " + what + "\n" + text("body"));
      }
      Thread.sleep(20);
    }
  }

  /** Something that will be so. */
  interface Check {
    boolean holds() throws Exception;
  }

  void screenshot(Path file) throws IOException, InterruptedException {
    Files.createDirectories(file.getParent());
    Files.write(
        file, Base64.getDecoder().decode(send("GET", "/screenshot", Map.of()).getAsString()));
  }

  private JsonElement send(String method, String path, Map<String, Object> body)
      throws IOException, InterruptedException {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(session + path)).timeout(Duration.ofSeconds(60));
    request =
        method.equals("GET")
            ? request.GET()
            : request.method(method, HttpRequest.BodyPublishers.ofString(GSON.toJson(body)));
    HttpResponse<String> response =
        http.send(request.build(), HttpResponse.BodyHandlers.ofString());
    JsonElement value = GSON.fromJson(response.body(), JsonObject.class).get("value");
    if (response.statusCode() != 200) {
      throw new IOException(path + ": " + value);
    }
    return value;
  }

  @Override
  public void close() throws IOException {
    try {
      send("DELETE", "", Map.of());
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    } finally {
      end();
    }
  }

  private void end() {
    driver.descendants().forEach(ProcessHandle::destroy);
    driver.destroy();
  }
}
