package lowfirst.bench.web;

import java.nio.charset.StandardCharsets;
import java.util.Map;

/** What a browser may send, as one function of bytes: path, fields, cookie, a line each. */
public final class RequestFuzz {
  private RequestFuzz() {}

  /** Reads a request of these bytes; throws only where the bench is at fault. */
  public static void read(byte[] bytes) {
    String[] lines = new String(bytes, StandardCharsets.UTF_8).split("\n", 4);
    var fields = Request.fieldsOf(line(lines, 1));
    var request =
        new Request(
            "GET",
            line(lines, 0),
            fields,
            Request.fieldsOf(line(lines, 2)),
            Map.of("cookie", line(lines, 3), "host", line(lines, 3)),
            Request.Peer.NETWORK);
    request.segments();
    request.cookie("lowfirst");
    fields.keySet().forEach(request::fields);
    new Guard(java.util.Set.of("127.0.0.1:1"), java.util.Optional.empty()).refusal(request);
  }

  private static String line(String[] lines, int at) {
    return at < lines.length ? lines[at] : "";
  }
}
