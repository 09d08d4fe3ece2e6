package lowfirst.intake.text;

import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Signs spelt as in a page of the web (character references of HTML): Omega between an ampersand
 * and a semicolon, or its number there. Only those that are no ASCII are put back, since a
 * reference may also hide a separator or a quote; and the ampersand, which means nothing in a
 * table.
 */
final class WebSigns {
  private static final Pattern REFERENCE =
      Pattern.compile(
          "&(?:amp;)?(?:#(\\d{2,6})|#[xX]([0-9a-fA-F]{2,5})|(\\p{Alpha}\\p{Alnum}{1,7}));");

  private static final Map<String, String> NAMED =
      Map.ofEntries(
          Map.entry("micro", "µ"),
          Map.entry("mu", "µ"),
          Map.entry("Omega", "Ω"),
          Map.entry("ohm", "Ω"),
          Map.entry("plusmn", "±"),
          Map.entry("deg", "°"),
          Map.entry("times", "×"),
          Map.entry("frac12", "½"),
          Map.entry("frac14", "¼"),
          Map.entry("ndash", "–"),
          Map.entry("nbsp", "\u00a0"),
          Map.entry("amp", "&"));

  private WebSigns() {}

  /** The text with such signs as they are. */
  static String plain(String text) {
    return REFERENCE.matcher(text).replaceAll(found -> Matcher.quoteReplacement(sign(found)));
  }

  private static String sign(MatchResult found) {
    if (found.group(3) != null) {
      return NAMED.getOrDefault(found.group(3), found.group());
    }
    int sign =
        found.group(1) != null
            ? Integer.parseInt(found.group(1))
            : Integer.parseInt(found.group(2), 16);
    boolean isSign = sign > 0x9f && Character.isDefined(sign);
    return isSign ? Character.toString(sign) : found.group();
  }
}
