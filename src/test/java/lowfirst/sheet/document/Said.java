package lowfirst.sheet.document;

import static org.junit.jupiter.api.Assertions.fail;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import lowfirst.board.Kit;
import lowfirst.intake.KitFiles;
import lowfirst.intake.KitReader;
import lowfirst.intake.KitReading;

/**
 * What a document says, a line for each thing: {@code # heading}, {@code ! caution}, {@code name:
 * text} for a fact, {@code caption: header | header} above a table, {@code cell | cell} for a row,
 * {@code <words> caption} for a figure. A box to tick is {@code [ ]} or {@code [x]}, a line to
 * write on {@code _what stands there_}.
 */
public final class Said implements Block.Writer<Void> {
  private final List<String> lines = new ArrayList<>();

  private Said() {}

  /** The lines of a document, its title and subtitle first. */
  public static List<String> lines(Document document) {
    var said = new Said();
    said.lines.add(document.title());
    said.lines.add(document.subtitle());
    document.blocks().forEach(block -> block.fold(said));
    return said.lines;
  }

  /** Holds that these lines stand there in this order, whatever stands between them. */
  public static void assertSays(Document document, String... expected) {
    List<String> lines = lines(document);
    int at = 0;
    for (String line : expected) {
      int found = lines.subList(at, lines.size()).indexOf(line);
      if (found < 0) {
        fail("not there, or not in this place:\n  " + line + "\nin\n" + String.join("\n", lines));
      }
      at += found + 1;
    }
  }

  /** The rows of the table with this caption. */
  public static List<String> rows(Document document, String caption) {
    return document.blocks().stream()
        .filter(block -> block instanceof Block.Table table && table.caption().equals(caption))
        .flatMap(block -> ((Block.Table) block).rows().stream())
        .map(Said::row)
        .toList();
  }

  /** A kit of these files: name, text, name, text. */
  public static KitReading reading(String... namesAndTexts) {
    var files = new TreeMap<String, byte[]>();
    for (int i = 0; i < namesAndTexts.length; i += 2) {
      files.put(namesAndTexts[i], namesAndTexts[i + 1].getBytes(StandardCharsets.UTF_8));
    }
    return KitReader.read(new KitFiles("kit", files, List.of()));
  }

  public static Kit kit(String... namesAndTexts) {
    return reading(namesAndTexts).kit();
  }

  private static String row(Block.Table.Row row) {
    return row.cells().stream().map(Said::cell).collect(Collectors.joining(" | "));
  }

  private static String cell(Block.Cell cell) {
    return switch (cell.entry()) {
      case BOX -> "[ ]";
      case BOX_TICKED -> "[x]";
      case FIELD -> "_" + cell.text() + "_";
      case NONE -> cell.text();
    };
  }

  @Override
  public Void heading(Block.Heading heading) {
    lines.add("#".repeat(heading.level() - 1) + " " + heading.text());
    return null;
  }

  @Override
  public Void paragraph(Block.Paragraph paragraph) {
    lines.add(paragraph.text());
    return null;
  }

  @Override
  public Void caution(Block.Caution caution) {
    lines.add("! " + caution.text());
    return null;
  }

  @Override
  public Void facts(Block.Facts facts) {
    facts.picture().ifPresent(drawing -> lines.add("<" + drawing.words() + "> "));
    facts.facts().forEach(fact -> lines.add(fact.name() + ": " + fact.text()));
    return null;
  }

  @Override
  public Void table(Block.Table table) {
    lines.add(
        table.columns().stream()
            .map(Block.Table.Column::header)
            .collect(Collectors.joining(" | ", table.caption() + ": ", "")));
    table.rows().forEach(row -> lines.add(row(row)));
    return null;
  }

  @Override
  public Void figure(Block.Figure figure) {
    lines.add("<" + figure.drawing().words() + "> " + figure.caption());
    return null;
  }

  @Override
  public Void section(Block.Section section) {
    lines.add("----");
    return null;
  }
}
