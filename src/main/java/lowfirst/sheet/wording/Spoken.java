package lowfirst.sheet.wording;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Text as one says it: units in full, letters and figures of a designator apart. */
public final class Spoken {
  private static final Map<String, String> UNITS = units();
  private static final Pattern AMOUNT =
      Pattern.compile("(\\d[\\d.,]*)\\s?(" + String.join("|", UNITS.keySet()) + ")(?![\\p{L}\\d])");
  private static final Pattern DESIGNATOR = Pattern.compile("\\b([A-Z]{1,4})(\\d{1,4})\\b");

  private Spoken() {}

  /** The text to hand to a voice. */
  public static String of(String text) {
    String full =
        AMOUNT
            .matcher(text)
            .replaceAll(
                match ->
                    Matcher.quoteReplacement(match.group(1) + " " + UNITS.get(match.group(2))));
    return DESIGNATOR
        .matcher(full)
        .replaceAll("$1 $2")
        .replace(" × ", " times ")
        .replace("±", "plus or minus ")
        .replace("–", " to ");
  }

  private static Map<String, String> units() {
    var units = new LinkedHashMap<String, String>();
    String[][] prefixes = {
      {"k", "kilo"},
      {"M", "mega"},
      {"m", "milli"},
      {"µ", "micro"},
      {"n", "nano"},
      {"p", "pico"},
      {"", ""}
    };
    String[][] names = {
      {"Ω", "ohms"},
      {"F", "farads"},
      {"H", "henries"},
      {"Hz", "hertz"},
      {"V", "volts"},
      {"A", "amperes"},
      {"W", "watts"}
    };
    for (String[] name : names) {
      for (String[] prefix : prefixes) {
        units.put(prefix[0] + name[0], prefix[1] + name[1]);
      }
    }
    units.put("mm", "millimetres");
    units.put("%", "per cent");
    return units;
  }
}
