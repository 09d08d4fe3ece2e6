package lowfirst.bench;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Tells a browser that something was recorded, as server-sent events (WHATWG HTML, 9.2). It only
 * says "newer than what you show"; the browser then asks for its page again, so nothing can be
 * missed or shown twice.
 */
final class News {
  private static final int MOST_LISTENERS = 64;

  /** Shorter than the time after which routers forget an idle connection. */
  private static final long HEARTBEAT_MILLISECONDS = 15_000;

  private final AtomicInteger listeners = new AtomicInteger();
  private final Bench bench;

  News(Bench bench) {
    this.bench = bench;
  }

  void tell(long seen, OutputStream stream) throws IOException {
    if (listeners.incrementAndGet() > MOST_LISTENERS) {
      listeners.decrementAndGet();
      write(stream, "retry: 10000\n\n");
      return;
    }
    try {
      write(stream, "retry: 1000\n\n");
      long told = seen;
      while (!bench.isClosed()) {
        long now = bench.awaitNewer(told, HEARTBEAT_MILLISECONDS);
        if (now > told) {
          write(stream, "id: " + now + "\ndata: " + now + "\n\n");
          told = now;
        } else {
          write(stream, ": still here\n\n");
        }
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    } finally {
      listeners.decrementAndGet();
    }
  }

  private static void write(OutputStream stream, String text) throws IOException {
    stream.write(text.getBytes(StandardCharsets.UTF_8));
    stream.flush();
  }
}
