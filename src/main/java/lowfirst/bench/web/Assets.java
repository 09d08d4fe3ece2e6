package lowfirst.bench.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Optional;

/** The style sheets and the script: a fixed list from inside the program, never a path on disk. */
public final class Assets {
  private static final Map<String, String> TYPES =
      Map.of(
          "/bench.css", "text/css; charset=utf-8",
          "/dark.css", "text/css; charset=utf-8",
          "/bench.js", "text/javascript; charset=utf-8",
          "/icon.svg", "image/svg+xml");

  private Assets() {}

  static boolean has(String path) {
    return TYPES.containsKey(path);
  }

  /** The file at this path; empty when it is none of ours. */
  public static Optional<Response> answer(String path) {
    return Optional.ofNullable(TYPES.get(path))
        .map(
            type ->
                new Response(
                    200, Map.of("Content-Type", type, "Cache-Control", "no-cache"), bytes(path)));
  }

  private static byte[] bytes(String path) {
    try (InputStream stream = Assets.class.getResourceAsStream("page" + path)) {
      return java.util.Objects.requireNonNull(stream, path).readAllBytes();
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
