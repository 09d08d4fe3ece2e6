package lowfirst.sheet.text;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Document;

/**
 * Documents as plain text for a terminal or a log. Everything is said in words; nothing is clipped.
 */
public final class TextWriter implements Block.Writer<String> {
  private static final int NARROWEST = 20;

  /** So many texts are kept as they are written before it starts anew. */
  private static final int MOST_KEPT = 500;

  private final int width;

  /** How texts of facts are written: by the width that is left for names, then by the name. */
  private final Map<Integer, Map<String, Map<String, String>>> said = new HashMap<>();

  private final Map<String, String> cautions = new HashMap<>();

  private final Map<String, String> paragraphs = new HashMap<>();

  private TextWriter(int width) {
    this.width = Math.max(NARROWEST, width);
  }

  /**
   * The document as text.
   *
   * @param width columns of the terminal; lines are no longer, except that below 20 counts as 20
   * @return lines ended by line feeds, with no space at their ends
   */
  public static String write(Document document, int width) {
    var text = new StringBuilder();
    write(document, width, text::append);
    return text.toString();
  }

  /**
   * The same, handed on block by block: a long document need not stand in memory as one text.
   *
   * @param out takes whole lines with their ends
   */
  public static void write(Document document, int width, Consumer<String> out) {
    var writer = new TextWriter(width);
    out.accept(text(writer.underlined(document.title(), '=')));
    if (!document.subtitle().isBlank()) {
      out.accept(text(writer.wrapped("", document.subtitle())));
    }
    for (Block block : document.toRead()) {
      String text = block.fold(writer);
      if (!text.isEmpty()) {
        out.accept("\n");
        out.accept(text);
      }
    }
  }

  /** Lines as they are written; blanks that don't break have done their work by now. */
  private static String text(List<String> lines) {
    return String.join("\n", lines).concat("\n").replace('\u00a0', ' ');
  }

  private List<String> underlined(String text, char rule) {
    List<String> lines = wrapped("", text);
    int longest = lines.stream().mapToInt(Wrapping::width).max().orElse(0);
    var underlined = new ArrayList<>(lines);
    underlined.add(String.valueOf(rule).repeat(longest));
    return underlined;
  }

  /** Wrapped after {@code label}; further lines begin where the first one's words do. */
  private List<String> wrapped(String label, String text) {
    int indent = Wrapping.width(label);
    var lines = new ArrayList<String>();
    for (String line : Wrapping.lines(Wrapping.harmless(text), width - indent)) {
      lines.add((lines.isEmpty() ? label : " ".repeat(line.isEmpty() ? 0 : indent)) + line);
    }
    return lines;
  }

  @Override
  public String heading(Block.Heading heading) {
    return text(
        heading.level() <= 2
            ? underlined(heading.text(), '-')
            : wrapped("", "-- " + heading.text() + " --"));
  }

  @Override
  public String paragraph(Block.Paragraph paragraph) {
    return kept(paragraphs, paragraph.text(), () -> wrapped("", paragraph.text()));
  }

  @Override
  public String caution(Block.Caution caution) {
    return kept(cautions, caution.text(), () -> wrapped("CAUTION! ", caution.text()));
  }

  @Override
  public String facts(Block.Facts facts) {
    int names = facts.facts().stream().mapToInt(f -> Wrapping.width(f.name())).max().orElse(0);
    boolean aligned = names + 2 <= width / 2;
    var texts = new ArrayList<String>(facts.facts().size());
    facts.picture().ifPresent(drawing -> texts.add(picture(drawing.words())));
    for (Block.Facts.Fact fact : facts.facts()) {
      texts.add(
          aligned ? kept(fact, names + 2) : text(wrapped("", fact.name() + ": " + fact.text())));
    }
    return String.join("", texts);
  }

  private String kept(Block.Facts.Fact fact, int indent) {
    return kept(
        said.computeIfAbsent(indent, none -> new HashMap<>())
            .computeIfAbsent(fact.name(), none -> new HashMap<>()),
        fact.text(),
        () -> aligned(fact, indent));
  }

  /** Facts, cautions and paragraphs say the same again and again. */
  private static String kept(Map<String, String> texts, String text, Supplier<List<String>> lines) {
    if (texts.size() > MOST_KEPT) {
      texts.clear();
    }
    return texts.computeIfAbsent(text, none -> text(lines.get()));
  }

  /** A fact with its text beside its name, {@code indent} columns from the left. */
  private List<String> aligned(Block.Facts.Fact fact, int indent) {
    String start = Wrapping.padded(Wrapping.harmless(fact.name()), indent);
    var lines = new ArrayList<String>();
    for (String line : Wrapping.lines(Wrapping.harmless(fact.text()), width - indent)) {
      lines.add((start + line).stripTrailing());
      start = " ".repeat(indent);
    }
    return lines;
  }

  @Override
  public String table(Block.Table table) {
    var lines = new ArrayList<String>();
    if (!table.caption().isBlank()) {
      lines.addAll(wrapped("", table.caption()));
    }
    lines.addAll(TextTable.lines(table, width));
    return text(lines);
  }

  @Override
  public String figure(Block.Figure figure) {
    return picture(figure.caption().isBlank() ? figure.drawing().words() : figure.caption());
  }

  private String picture(String words) {
    return text(wrapped("Picture: ", words));
  }

  @Override
  public String section(Block.Section section) {
    return "";
  }
}
