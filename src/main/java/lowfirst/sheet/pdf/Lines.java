package lowfirst.sheet.pdf;

import java.util.ArrayList;
import java.util.List;
import lowfirst.sheet.document.Unparted;

/**
 * A text measured once in one face, to be broken into lines of any width. Nothing is cut off: a
 * word wider than the line is broken inside.
 */
final class Lines {

  /** One line, ready to print. */
  record Line(String text, double width) {}

  private record Word(String text, double width) {}

  private final Typeface face;
  private final double size;
  private final double space;
  private final List<List<Word>> paragraphs = new ArrayList<>();

  private Lines(Typeface face, double size) {
    this.face = face;
    this.size = size;
    this.space = face.width(' ') * size;
  }

  /**
   * A text measured.
   *
   * @param size of the type, points
   */
  static Lines of(Typeface face, double size, String text) {
    var lines = new Lines(face, size);
    for (String paragraph : face.printable(text).split("\n", -1)) {
      lines.paragraphs.add(lines.words(paragraph));
    }
    return lines;
  }

  private List<Word> words(String paragraph) {
    var words = new ArrayList<Word>();
    int at = 0;
    while (at < paragraph.length()) {
      int end = paragraph.indexOf(' ', at);
      end = end < 0 ? paragraph.length() : end;
      String word = paragraph.substring(at, end);
      at = end + 1;
      if (word.isEmpty()) {
        continue;
      }
      int last = words.size() - 1;
      if (last >= 0 && Unparted.binds(words.get(last).text(), word)) {
        words.set(last, word(words.get(last).text() + Unparted.JOINT + word));
      } else {
        words.add(word(word));
      }
    }
    return words;
  }

  private Word word(String text) {
    return new Word(text, face.width(text) * size);
  }

  /** The width of the widest word, points. */
  double widestWord() {
    double widest = 0;
    for (List<Word> words : paragraphs) {
      for (Word word : words) {
        widest = Math.max(widest, word.width());
      }
    }
    return widest;
  }

  /** The width on one line, points. */
  double naturalWidth() {
    double widest = 0;
    for (List<Word> words : paragraphs) {
      double width = space * Math.max(0, words.size() - 1);
      for (Word word : words) {
        width += word.width();
      }
      widest = Math.max(widest, width);
    }
    return widest;
  }

  /** Whether there is nothing to print. */
  boolean isBlank() {
    return paragraphs.stream().allMatch(List::isEmpty);
  }

  /** Broken into lines no wider than {@code width} points; at least one. */
  List<Line> within(double width) {
    var lines = new ArrayList<Line>();
    for (List<Word> words : paragraphs) {
      breakUp(words, width, lines);
    }
    return lines;
  }

  private void breakUp(List<Word> words, double width, List<Line> lines) {
    var line = new StringBuilder();
    double used = 0;
    for (Word word : words) {
      if (!line.isEmpty() && used + space + word.width() > width) {
        lines.add(new Line(line.toString().replace(Unparted.JOINT, ' '), used));
        line.setLength(0);
        used = 0;
      }
      if (!line.isEmpty()) {
        line.append(' ');
        used += space;
      }
      if (word.width() > width) {
        String rest = brokenOff(word.text(), width, lines);
        line.append(rest);
        used = face.width(rest) * size;
      } else {
        line.append(word.text());
        used += word.width();
      }
    }
    lines.add(new Line(line.toString().replace(Unparted.JOINT, ' '), used));
  }

  /** Breaks a word too wide for a line into lines; what is left fits. */
  private String brokenOff(String word, double width, List<Line> lines) {
    String rest = word;
    while (face.width(rest) * size > width) {
      int cut = fitting(rest, width);
      if (cut >= rest.length()) {
        return rest;
      }
      String part = rest.substring(0, cut);
      lines.add(new Line(part, face.width(part) * size));
      rest = rest.substring(cut);
    }
    return rest;
  }

  /**
   * How many chars fit: after a joint such as a slash where one lies in the second half, but never
   * at the point of a decimal number.
   */
  private int fitting(String word, double width) {
    double used = 0;
    int end = 0;
    int joint = 0;
    while (end < word.length()) {
      int codePoint = word.codePointAt(end);
      used += face.width(codePoint) * size;
      if (used > width && end > 0) {
        return joint > end / 2 ? joint : end;
      }
      end += Character.charCount(codePoint);
      boolean decimal =
          (codePoint == '.' || codePoint == ',')
              && end < word.length()
              && Character.isDigit(word.charAt(end));
      if ("-/_,;:.".indexOf(codePoint) >= 0 && !decimal) {
        joint = end;
      }
    }
    return end;
  }
}
