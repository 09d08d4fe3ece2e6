package lowfirst.bench.web;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/**
 * The JDK's HTTP server with everything bounded: the size of a body, the time a request may take,
 * how many are served at once. Every answer carries the headers that keep foreign content out.
 */
public final class Server implements AutoCloseable {
  /** A tick of the largest batch stays far below. */
  private static final int LARGEST_BODY = 64 * 1024;

  private static final int LONGEST_ADDRESS = 4 * 1024;
  private static final int MOST_AT_ONCE = 128;

  /** Content of our own only; neither script nor style inside a page (CSP level 3). */
  private static final Map<String, String> ALWAYS =
      Map.of(
          "Content-Security-Policy",
              "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self';"
                  + " connect-src 'self'; form-action 'self'; base-uri 'none';"
                  + " frame-ancestors 'none'",
          "X-Content-Type-Options", "nosniff",
          "Referrer-Policy", "same-origin",
          "Cross-Origin-Opener-Policy", "same-origin",
          "Cross-Origin-Resource-Policy", "same-origin");

  static {
    // Read once by the JDK's server: send small answers at once, and drop who never finishes
    // asking.
    System.setProperty("sun.net.httpserver.nodelay", "true");
    System.setProperty("sun.net.httpserver.maxReqTime", "20");
  }

  /** Answers requests. */
  public interface Pages {
    /** The answer to a request. */
    Response answer(Request request);

    /** Keeps telling what is new until the browser goes away; called for {@code /news} only. */
    void news(Request request, java.io.OutputStream stream) throws IOException;

    /** The page that says that something went wrong here. */
    Response sorry(RuntimeException failure);
  }

  private final HttpServer http;
  private final ExecutorService threads;

  private Server(HttpServer http, ExecutorService threads) {
    this.http = http;
    this.threads = threads;
  }

  /**
   * Starts to answer.
   *
   * @param address port 0 takes a free one
   */
  public static Server start(
      InetSocketAddress address, java.util.function.IntFunction<Guard> guards, Pages pages)
      throws IOException {
    HttpServer http = HttpServer.create(address, 64);
    var threads =
        new ThreadPoolExecutor(
            8,
            MOST_AT_ONCE,
            30,
            TimeUnit.SECONDS,
            new SynchronousQueue<>(),
            Server::daemon,
            new ThreadPoolExecutor.AbortPolicy());
    Guard guard = guards.apply(http.getAddress().getPort());
    http.createContext("/", exchange -> handle(exchange, guard, pages));
    http.setExecutor(threads);
    http.start();
    return new Server(http, threads);
  }

  private static Thread daemon(Runnable work) {
    var thread = new Thread(work, "bench");
    thread.setDaemon(true);
    return thread;
  }

  /** The port that it answers on. */
  public int port() {
    return http.getAddress().getPort();
  }

  @Override
  public void close() {
    http.stop(0);
    threads.shutdownNow();
  }

  private static void handle(HttpExchange exchange, Guard guard, Pages pages) throws IOException {
    try (exchange) {
      Response answer;
      try {
        Request request = read(exchange);
        var refusal = guard.refusal(request);
        if (refusal.isEmpty() && request.method().equals("GET") && request.path().equals("/news")) {
          tellNews(exchange, request, pages);
          return;
        }
        answer = refusal.orElseGet(() -> answerTo(request, pages));
      } catch (Refused refused) {
        answer = refused.answer;
      }
      send(exchange, answer);
    }
  }

  private static Response answerTo(Request request, Pages pages) {
    try {
      return pages.answer(request);
    } catch (RuntimeException failure) {
      return pages.sorry(failure);
    }
  }

  private static void tellNews(HttpExchange exchange, Request request, Pages pages)
      throws IOException {
    ALWAYS.forEach(exchange.getResponseHeaders()::set);
    exchange.getResponseHeaders().set("Content-Type", "text/event-stream; charset=utf-8");
    exchange.getResponseHeaders().set("Cache-Control", "no-store");
    exchange.sendResponseHeaders(200, 0);
    pages.news(request, exchange.getResponseBody());
  }

  private static void send(HttpExchange exchange, Response answer) throws IOException {
    ALWAYS.forEach(exchange.getResponseHeaders()::set);
    answer.headers().forEach(exchange.getResponseHeaders()::set);
    boolean bodyless = answer.body().length == 0 || exchange.getRequestMethod().equals("HEAD");
    exchange.sendResponseHeaders(answer.status(), bodyless ? -1 : answer.body().length);
    if (!bodyless) {
      exchange.getResponseBody().write(answer.body());
    }
  }

  private static Request read(HttpExchange exchange) throws IOException, Refused {
    String method = exchange.getRequestMethod();
    if (!method.equals("GET") && !method.equals("HEAD") && !method.equals("POST")) {
      throw new Refused(Response.text(405, "Only GET and POST.").with("Allow", "GET, HEAD, POST"));
    }
    if (exchange.getRequestURI().toString().length() > LONGEST_ADDRESS) {
      throw new Refused(Response.text(414, "That address is too long."));
    }
    var headers = new HashMap<String, String>();
    exchange
        .getRequestHeaders()
        .forEach((name, values) -> headers.put(name.toLowerCase(Locale.ROOT), values.get(0)));
    String form = method.equals("POST") ? body(exchange, headers) : "";
    String query = exchange.getRequestURI().getRawQuery();
    String path = exchange.getRequestURI().getRawPath();
    return new Request(
        method.equals("HEAD") ? "GET" : method,
        path == null ? "/" : path,
        Request.fieldsOf(query == null ? "" : query),
        Request.fieldsOf(form),
        headers,
        exchange.getRemoteAddress().getAddress().isLoopbackAddress()
            ? Request.Peer.THIS_COMPUTER
            : Request.Peer.NETWORK);
  }

  private static String body(HttpExchange exchange, Map<String, String> headers)
      throws IOException, Refused {
    if (!headers.getOrDefault("content-type", "").startsWith("application/x-www-form-urlencoded")) {
      throw new Refused(Response.text(415, "A change is sent as a form."));
    }
    byte[] body = exchange.getRequestBody().readNBytes(LARGEST_BODY + 1);
    if (body.length > LARGEST_BODY) {
      throw new Refused(
          Response.text(413, "That is too long to be a change.").with("Connection", "close"));
    }
    return new String(body, StandardCharsets.UTF_8);
  }

  /** A request that is turned down before it is understood. */
  private static final class Refused extends Exception {
    private static final long serialVersionUID = 1L;
    private final transient Response answer;

    Refused(Response answer) {
      super("refused", null, false, false);
      this.answer = answer;
    }
  }
}
