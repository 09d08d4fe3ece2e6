package lowfirst.cli.process;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.Map;

/** Signs of the trade in plain letters, for a console whose code page lacks them. */
final class SpelledOut {
  private static final Map<Integer, String> WORDS = new HashMap<>();

  static {
    put("Ω", "ohm", "µ", "u", "μ", "u", "°", "deg", "℃", "degC", "±", "+/-", "∓", "-/+");
    put("²", "^2", "³", "^3", "⁶", "^6", "⁻", "^-", "½", "1/2", "·", "*", "×", "x", "√", "sqrt");
    put("−", "-", "–", "-", "—", "-", "≤", "<=", "≥", ">=", "≈", "~");
    put("→", "->", "←", "<-", "↑", "^", "↓", "v", "⇄", "<->", "›", ">", "‹", "<", "…", "...");
    put("Δ", "d", "π", "pi", "φ", "phi", "τ", "tau", "θ", "theta", "Σ", "sum", "§", "section ");
    put("✓", "ok", "✔", "ok", "✗", "x", "✘", "x", "☑", "[x]", "☐", "[ ]", "⚠", "!", "◆", "*");
    put("▲", "^", "△", "^", "▼", "v", "▽", "v", "○", "o", "●", "*", "•", "*");
    put("’", "'", "‘", "'", "“", "\"", "”", "\"", "€", "EUR", "£", "GBP", "ß", "ss", "\ufffd", "?");
    put("─", "-", "│", "|", "┌", "+", "┐", "+", "└", "+", "┘", "+", "├", "+", "┤", "+");
    put("┬", "+", "┴", "+", "┼", "+", "═", "=", "║", "|", "█", "#", "░", ".", "ł", "l", "ø", "o");
  }

  private SpelledOut() {}

  private static void put(String... pairs) {
    for (int i = 0; i < pairs.length; i += 2) {
      WORDS.put(pairs[i].codePointAt(0), pairs[i + 1]);
    }
  }

  /** The sign in ASCII; a letter without its accent; a question mark where nothing fits. */
  static String of(int sign) {
    String word = WORDS.get(sign);
    if (word != null) {
      return word;
    }
    String bare =
        Normalizer.normalize(Character.toString(sign), Normalizer.Form.NFKD)
            .replaceAll("[^\\x00-\\x7f]", "");
    return bare.isEmpty() ? "?" : bare;
  }
}
