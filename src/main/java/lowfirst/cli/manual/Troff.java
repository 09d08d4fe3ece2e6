package lowfirst.cli.manual;

import java.util.Locale;

/**
 * A manual page under construction, in the {@code man} macros of troff. Every text is escaped: what
 * troff would take for a request, an escape or a hyphenation point is printed as it stands.
 */
final class Troff {
  private final StringBuilder page = new StringBuilder();

  /** The page of a command, with the date and the program's version at its foot. */
  Troff(String title, String date, String version) {
    page.append(".TH \"").append(title.toUpperCase(Locale.ROOT)).append("\" \"1\" \"");
    page.append(date).append("\" \"").append(version).append("\" \"User Commands\"\n");
    // Left-aligned, and words whole: names of files and options are copied from here.
    page.append(".nh\n.ad l\n");
  }

  /** Begins a section. */
  Troff section(String heading) {
    page.append(".SH \"").append(heading).append("\"\n");
    return this;
  }

  /** A paragraph of plain text. */
  Troff paragraph(String text) {
    page.append(".PP\n").append(escaped(text)).append('\n');
    return this;
  }

  /** Words in bold, then the rest of the line in plain. */
  Troff synopsis(String bold, String rest) {
    page.append("\\fB").append(escaped(bold)).append("\\fR ").append(escaped(rest)).append('\n');
    return this;
  }

  /** A plain line, for the NAME section, which other programs read. */
  Troff line(String text) {
    page.append(escaped(text)).append('\n');
    return this;
  }

  /** A term in bold with its explanation indented below. */
  Troff term(String term, String explanation) {
    page.append(".TP\n\\fB").append(escaped(term)).append("\\fR\n");
    page.append(escaped(explanation)).append('\n');
    return this;
  }

  /** A command as typed, with what it is for above it where that is said. */
  Troff typed(String purpose, String command) {
    page.append(".PP\n");
    if (!purpose.isEmpty()) {
      page.append(escaped(purpose.substring(0, 1).toUpperCase(Locale.ROOT)));
      page.append(escaped(purpose.substring(1))).append(":\n");
    }
    page.append(".RS 4\n.nf\n").append(escaped(command)).append("\n.fi\n.RE\n");
    return this;
  }

  private static String escaped(String text) {
    var safe = new StringBuilder();
    text.codePoints().forEach(point -> safe.append(escaped(point)));
    boolean request = safe.length() > 0 && (safe.charAt(0) == '.' || safe.charAt(0) == '\'');
    return request ? "\\&" + safe : safe.toString();
  }

  private static String escaped(int point) {
    return switch (point) {
      case '\\' -> "\\e";
      case '-' -> "\\-";
      case '\'' -> "\\(aq";
      case '`' -> "\\(ga";
      case '^' -> "\\(ha";
      case '~' -> "\\(ti";
      case '"' -> "\\(dq";
      case '\n', '\r' -> " ";
      default -> point < 128 ? Character.toString(point) : String.format("\\[u%04X]", point);
    };
  }

  @Override
  public String toString() {
    return page.toString();
  }
}
