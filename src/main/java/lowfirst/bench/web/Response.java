package lowfirst.bench.web;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What the server answers.
 *
 * @param status the HTTP status
 * @param headers besides those that every answer has
 * @param body the bytes; none for a redirection
 */
@SuppressWarnings("ArrayRecordComponent") // nobody compares or keeps an answer
public record Response(int status, Map<String, String> headers, byte[] body) {

  public Response {
    headers = Map.copyOf(headers);
  }

  /** A page, which no browser may keep. */
  public static Response html(int status, String page) {
    return new Response(
        status,
        Map.of("Content-Type", "text/html; charset=utf-8", "Cache-Control", "no-store"),
        page.getBytes(StandardCharsets.UTF_8));
  }

  /** A line of plain words, which no browser may keep. */
  public static Response text(int status, String words) {
    return new Response(
        status,
        Map.of("Content-Type", "text/plain; charset=utf-8", "Cache-Control", "no-store"),
        (words + "\n").getBytes(StandardCharsets.UTF_8));
  }

  /** Look there instead, with GET: what follows every change, so that reloading repeats nothing. */
  public static Response seeOther(String path) {
    return new Response(303, Map.of("Location", path, "Cache-Control", "no-store"), new byte[0]);
  }

  /** The same answer with one more header. */
  public Response with(String name, String value) {
    var more = new LinkedHashMap<>(headers);
    more.put(name, value);
    return new Response(status, more, body);
  }
}
