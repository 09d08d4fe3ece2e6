package lowfirst.bench.web;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a browser asks for, read whole and bounded.
 *
 * @param method GET or POST
 * @param path the path as sent, still encoded
 * @param query the fields of the address
 * @param form the fields of the body
 * @param headers by lower-case name, the first of each
 * @param peer whether the other end is this computer
 */
public record Request(
    String method,
    String path,
    Map<String, List<String>> query,
    Map<String, List<String>> form,
    Map<String, String> headers,
    Peer peer) {

  /** Where a request comes from. */
  public enum Peer {
    THIS_COMPUTER,
    NETWORK
  }

  public Request {
    query = Map.copyOf(query);
    form = Map.copyOf(form);
    headers = Map.copyOf(headers);
  }

  /** A header; empty when it wasn't sent. */
  public Optional<String> header(String name) {
    return Optional.ofNullable(headers.get(name));
  }

  /** The first field of this name, from the body before the address; empty when there is none. */
  public String field(String name) {
    List<String> values = fields(name);
    return values.isEmpty() ? "" : values.get(0);
  }

  /** Every field of this name, from the body or else from the address. */
  public List<String> fields(String name) {
    return form.getOrDefault(name, query.getOrDefault(name, List.of()));
  }

  /** A cookie; empty when it wasn't sent. */
  public Optional<String> cookie(String name) {
    for (String pair : header("cookie").orElse("").split(";")) {
      int equals = pair.indexOf('=');
      if (equals > 0 && pair.substring(0, equals).strip().equals(name)) {
        return decoded(pair.substring(equals + 1).strip());
      }
    }
    return Optional.empty();
  }

  /** The decoded parts of the path; none at all when it can't be decoded. */
  public List<String> segments() {
    var segments = new ArrayList<String>();
    for (String part : path.split("/")) {
      if (!part.isEmpty()) {
        Optional<String> segment = decoded(part.replace("+", "%2B"));
        if (segment.isEmpty()) {
          return List.of("?");
        }
        segments.add(segment.get());
      }
    }
    return List.copyOf(segments);
  }

  /** The fields of a form or an address; a field that can't be decoded is left out. */
  public static Map<String, List<String>> fieldsOf(String encoded) {
    var fields = new LinkedHashMap<String, List<String>>();
    for (String pair : encoded.split("&")) {
      int equals = pair.indexOf('=');
      Optional<String> name = decoded(equals < 0 ? pair : pair.substring(0, equals));
      Optional<String> value = decoded(equals < 0 ? "" : pair.substring(equals + 1));
      if (!pair.isEmpty() && name.isPresent() && value.isPresent()) {
        fields.computeIfAbsent(name.get(), any -> new ArrayList<>()).add(value.get());
      }
    }
    return fields;
  }

  private static Optional<String> decoded(String text) {
    try {
      return Optional.of(URLDecoder.decode(text, StandardCharsets.UTF_8));
    } catch (IllegalArgumentException broken) {
      return Optional.empty();
    }
  }
}
