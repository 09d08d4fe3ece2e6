package lowfirst.sheet.document;

import java.util.List;
import java.util.Optional;
import lowfirst.sheet.drawing.Drawing;

/** One piece of a document. Closed; writers handle every kind by {@link #fold}. */
public sealed interface Block {

  /** Calls the one method of {@code writer} that fits this block. */
  <R> R fold(Writer<R> writer);

  /** What a writer must be able to write. */
  interface Writer<R> {
    R heading(Heading heading);

    R paragraph(Paragraph paragraph);

    R caution(Caution caution);

    R facts(Facts facts);

    R table(Table table);

    R figure(Figure figure);

    R section(Section section);
  }

  /**
   * A heading below the title.
   *
   * @param level 2 for a chapter, 3 for a section
   */
  record Heading(int level, String text) implements Block {
    @Override
    public <R> R fold(Writer<R> writer) {
      return writer.heading(this);
    }
  }

  /** Running text. */
  record Paragraph(String text) implements Block {
    @Override
    public <R> R fold(Writer<R> writer) {
      return writer.paragraph(this);
    }
  }

  /**
   * A warning that stands where the hand is; shown with a sign and the word, never colour alone.
   */
  record Caution(String text) implements Block {
    @Override
    public <R> R fold(Writer<R> writer) {
      return writer.caution(this);
    }
  }

  /**
   * Names with what they are: kit, board, unit, fingerprint.
   *
   * @param picture what they tell of, beside them
   */
  record Facts(List<Fact> facts, Optional<Drawing> picture) implements Block {
    public Facts {
      facts = List.copyOf(facts);
    }

    /** Facts without a picture. */
    public Facts(List<Fact> facts) {
      this(facts, Optional.empty());
    }

    /** A name with what it is. */
    public record Fact(String name, String text) {}

    @Override
    public <R> R fold(Writer<R> writer) {
      return writer.facts(this);
    }
  }

  /**
   * Rows under headers. The header repeats on each page; a row never breaks across pages. One whose
   * first cell is empty goes on with the row above: it stays with it, and what the first columns of
   * that one hold may reach down beside it.
   */
  record Table(String caption, List<Column> columns, List<Row> rows) implements Block {
    public Table {
      columns = List.copyOf(columns);
      rows = List.copyOf(rows);
    }

    Table withoutCaption() {
      return new Table("", columns, rows);
    }

    /**
     * A column.
     *
     * @param weight its share of the width
     */
    public record Column(String header, Align align, double weight) {}

    /** How a column's cells stand. */
    public enum Align {
      START,
      END
    }

    /** Cells, as many as there are columns. */
    public record Row(List<Cell> cells) {
      public Row {
        cells = List.copyOf(cells);
      }
    }

    @Override
    public <R> R fold(Writer<R> writer) {
      return writer.table(this);
    }
  }

  /**
   * A cell of a table.
   *
   * @param text what it says; what text and CSV show
   * @param drawing what pages show beside or above the text
   * @param entry how a person fills it in
   */
  record Cell(String text, Optional<Drawing> drawing, Entry entry) {
    /** How a person fills a cell in. */
    public enum Entry {
      /** Not at all. */
      NONE,
      /** An empty box to tick. */
      BOX,
      /** A box already ticked. */
      BOX_TICKED,
      /** A line to write on; {@code text} is what stands there already. */
      FIELD
    }

    /** Plain text. */
    public static Cell of(String text) {
      return new Cell(text, Optional.empty(), Entry.NONE);
    }

    /** Text with a drawing. */
    public static Cell of(String text, Drawing drawing) {
      return new Cell(text, Optional.of(drawing), Entry.NONE);
    }

    /** A box to tick. */
    public static Cell box(boolean ticked) {
      return new Cell(ticked ? "x" : "", Optional.empty(), ticked ? Entry.BOX_TICKED : Entry.BOX);
    }

    /** A line to write on. */
    public static Cell field(String text) {
      return new Cell(text, Optional.empty(), Entry.FIELD);
    }
  }

  /**
   * A drawing with its caption.
   *
   * @param caption says in words what the drawing shows, for readers who can't see it
   */
  record Figure(Drawing drawing, String caption) implements Block {
    @Override
    public <R> R fold(Writer<R> writer) {
      return writer.figure(this);
    }
  }

  /** What follows, up to the next of these, begins a page where it doesn't fit on what is left. */
  record Section() implements Block {
    @Override
    public <R> R fold(Writer<R> writer) {
      return writer.section(this);
    }
  }
}
