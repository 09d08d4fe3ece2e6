package lowfirst.bench;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import lowfirst.bench.page.Shell.Person;
import lowfirst.bench.web.Request;
import lowfirst.bench.web.Response;

/** The choices of the person at a device, kept in a cookie of that device. */
final class People {
  private static final String COOKIE = "lowfirst-person";
  private static final int LONGEST_NAME = 60;
  private static final int LONGEST_KEY = 20;
  private static final int YEAR_SECONDS = 365 * 24 * 3600;

  private People() {}

  /** What the cookie says; anything it doesn't say, or not as we wrote it, is as at first. */
  static Person of(Request request) {
    return of(Request.fieldsOf(request.cookie(COOKIE).orElse("")));
  }

  /** What the form of this device says. */
  static Person chosen(Request request) {
    return of(request.form());
  }

  private static Person of(Map<String, List<String>> fields) {
    return new Person(
        plain(first(fields, "name"), LONGEST_NAME),
        oneOf(first(fields, "theme"), "auto", "light", "dark"),
        oneOf(first(fields, "keys"), "on", "off"),
        oneOf(first(fields, "voice"), "off", "on"),
        plain(first(fields, "pedal"), LONGEST_KEY));
  }

  /** The answer with the cookie that remembers a person. */
  static Response remembering(Response answer, Person person) {
    String fields =
        "name="
            + encoded(person.name())
            + "&theme="
            + person.theme()
            + "&keys="
            + person.keys()
            + "&voice="
            + person.voice()
            + "&pedal="
            + encoded(person.pedal());
    return answer.with(
        "Set-Cookie",
        COOKIE
            + "="
            + encoded(fields)
            + "; Path=/; Max-Age="
            + YEAR_SECONDS
            + "; HttpOnly; SameSite=Strict");
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  private static String first(Map<String, List<String>> fields, String name) {
    List<String> values = fields.getOrDefault(name, List.of());
    return values.isEmpty() ? "" : values.get(0);
  }

  private static String oneOf(String text, String usual, String... others) {
    return List.of(others).contains(text) ? text : usual;
  }

  /** One line without control characters, cut to a length. */
  static String plain(String text, int longest) {
    String line = text.replaceAll("[\\p{Cntrl}\\p{Cf}]+", " ").strip();
    return line.length() <= longest ? line : line.substring(0, longest);
  }
}
