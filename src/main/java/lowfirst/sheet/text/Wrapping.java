package lowfirst.sheet.text;

import java.util.ArrayList;
import java.util.List;
import lowfirst.sheet.document.Unparted;

/** Breaking text into lines of a given width in terminal columns. Nothing is ever cut off. */
final class Wrapping {
  private Wrapping() {}

  /**
   * The text in lines no wider than {@code width}: broken at spaces, and inside a word only where
   * the word alone is too wide. Line ends in the text are kept; at least one line.
   */
  static List<String> lines(String text, int width) {
    var lines = new ArrayList<String>();
    List<String> paragraphs = isOneLine(text) ? List.of(text) : List.of(text.split("\\R", -1));
    for (String paragraph : paragraphs) {
      wrapParagraph(paragraph, Math.max(2, width), lines);
    }
    return lines;
  }

  /** Whether no line ends in it; nearly every text is so, and then no pattern is needed. */
  private static boolean isOneLine(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (isLineEnd(text.charAt(i))) {
        return false;
      }
    }
    return true;
  }

  private static boolean isLineEnd(char c) {
    return c >= '\n' && c <= '\r' || c == '\u0085' || c == '\u2028' || c == '\u2029';
  }

  /**
   * The words between blanks and tabs, a number and its unit as one where both fit on a line; one
   * empty word where there is none.
   */
  private static List<String> words(String text, int width) {
    var words = new ArrayList<String>();
    int start = 0;
    for (int i = 0; i <= text.length(); i++) {
      if (i == text.length() || isBlank(text.charAt(i))) {
        if (i > start) {
          String word = text.substring(start, i);
          int last = words.size() - 1;
          boolean bound =
              last >= 0
                  && Unparted.binds(words.get(last), word)
                  && width(words.get(last)) + 1 + width(word) <= width;
          if (bound) {
            words.set(last, words.get(last) + ' ' + word);
          } else {
            words.add(word);
          }
        }
        start = i + 1;
      }
    }
    return words.isEmpty() ? List.of("") : words;
  }

  private static boolean isBlank(char c) {
    return c == ' ' || c == '\t';
  }

  private static void wrapParagraph(String paragraph, int width, List<String> lines) {
    if (isWrapped(paragraph) && width(paragraph) <= width) {
      lines.add(paragraph);
      return;
    }
    var line = new StringBuilder();
    int used = 0;
    for (String word : words(paragraph.strip(), width)) {
      int wordWidth = width(word);
      if (used > 0 && used + 1 + wordWidth > width) {
        lines.add(line.toString());
        line.setLength(0);
        used = 0;
      }
      if (used > 0) {
        line.append(' ');
        used++;
      }
      // A word that is too wide for a line starts one.
      String rest = word;
      while (width(rest) > width) {
        int cut = fitting(rest, width);
        lines.add(rest.substring(0, cut));
        rest = rest.substring(cut);
      }
      line.append(rest);
      used += width(rest);
    }
    lines.add(line.toString());
  }

  /** Whether its words are parted by one blank each and nothing else, as they will be written. */
  private static boolean isWrapped(String paragraph) {
    return paragraph.indexOf('\t') < 0
        && !paragraph.contains("  ")
        && paragraph.strip().length() == paragraph.length();
  }

  /** How many chars of {@code text} fit; at least one code point. */
  private static int fitting(String text, int width) {
    int used = 0;
    int end = 0;
    while (end < text.length()) {
      int codePoint = text.codePointAt(end);
      used += width(codePoint);
      if (used > width && end > 0) {
        return end;
      }
      end += Character.charCount(codePoint);
    }
    return end;
  }

  /** The widest single word. */
  static int longestWord(String text) {
    int longest = 0;
    int start = 0;
    for (int i = 0; i <= text.length(); i++) {
      if (i == text.length() || isBlank(text.charAt(i)) || isLineEnd(text.charAt(i))) {
        longest = Math.max(longest, width(text.substring(start, i)));
        start = i + 1;
      }
    }
    return longest;
  }

  /** Columns that a terminal uses for a text. */
  static int width(String text) {
    int width = 0;
    for (int i = 0; i < text.length(); ) {
      int codePoint = text.codePointAt(i);
      width += width(codePoint);
      i += Character.charCount(codePoint);
    }
    return width;
  }

  /** Padded with spaces on the right to {@code width}. */
  static String padded(String text, int width) {
    return text + " ".repeat(Math.max(0, width - width(text)));
  }

  /** Padded with spaces on the left to {@code width}. */
  static String paddedLeft(String text, int width) {
    return " ".repeat(Math.max(0, width - width(text))) + text;
  }

  /**
   * Columns of one character: 0 for marks that sit on another, 2 for those that East Asian scripts
   * and emoji draw wide (Unicode Standard Annex #11, property W and F by their blocks), else 1.
   */
  private static int width(int codePoint) {
    if (codePoint >= ' ' && codePoint <= '~') {
      return 1;
    }
    int type = Character.getType(codePoint);
    if (type == Character.NON_SPACING_MARK
        || type == Character.ENCLOSING_MARK
        || type == Character.FORMAT) {
      return 0;
    }
    boolean wide =
        codePoint >= 0x1100 && codePoint <= 0x115F
            || codePoint >= 0x2E80 && codePoint <= 0xA4CF && codePoint != 0x303F
            || codePoint >= 0xAC00 && codePoint <= 0xD7A3
            || codePoint >= 0xF900 && codePoint <= 0xFAFF
            || codePoint >= 0xFE30 && codePoint <= 0xFE6F
            || codePoint >= 0xFF00 && codePoint <= 0xFF60
            || codePoint >= 0xFFE0 && codePoint <= 0xFFE6
            || codePoint >= 0x1F300 && codePoint <= 0x1FAFF
            || codePoint >= 0x20000 && codePoint <= 0x3FFFD;
    return wide ? 2 : 1;
  }

  /**
   * The text with every control character replaced by its visible picture (U+2400 block), so that
   * nothing in a user's table can steer a terminal. Line ends and tabs stay.
   */
  static String harmless(String text) {
    if (isHarmless(text)) {
      return text;
    }
    var shown = new StringBuilder();
    text.codePoints()
        .forEach(
            codePoint ->
                shown.appendCodePoint(
                    !steersTerminal(codePoint)
                        ? codePoint
                        : codePoint < 0x20 ? 0x2400 + codePoint : 0xFFFD));
    return shown.toString();
  }

  /** None of the characters that steer lies outside the basic plane. */
  private static boolean isHarmless(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (steersTerminal(text.charAt(i))) {
        return false;
      }
    }
    return true;
  }

  private static boolean steersTerminal(int codePoint) {
    boolean bidirectional =
        codePoint >= 0x202A && codePoint <= 0x202E || codePoint >= 0x2066 && codePoint <= 0x2069;
    return bidirectional
        || Character.isISOControl(codePoint)
            && codePoint != '\n'
            && codePoint != '\r'
            && codePoint != '\t';
  }
}
