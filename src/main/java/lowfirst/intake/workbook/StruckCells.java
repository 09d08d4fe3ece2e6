package lowfirst.intake.workbook;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lowfirst.intake.column.WholeNumber;
import lowfirst.intake.text.Rows;
import lowfirst.intake.xml.XmlCursor;
import org.dhatim.fastexcel.reader.CellAddress;

/**
 * Finds the cells of a spreadsheet whose letters are struck through, all or some: by the font of
 * the cell (ECMA-376 part 1: 18.3.1.4 c, 18.8.10 cellXfs, 18.8.22 font) or of parts of its text.
 */
final class StruckCells {
  /** What stands in every file that strikes a letter, and in some others. */
  static final String SIGN = "strike";

  private final WorkbookParts parts;

  /** The numbers of the styles, as cells name them, whose font is struck through. */
  private final Set<String> styles = new HashSet<>();

  /** By its number, as cells name it, each shared text with fonts of its own. */
  private final Map<String, StruckText> texts = new HashMap<>();

  /**
   * A cell that is struck through.
   *
   * @param line the number of its row, as the spreadsheet counts
   * @param cell its column, from 0
   * @param whole whether all of its letters are
   */
  record Struck(int line, int cell, boolean whole) {}

  private StruckCells(byte[] bytes) throws IOException, XmlCursor.Refused {
    this.parts = new WorkbookParts(bytes);
    readStyles(parts.ofType("styles"));
    Optional<XmlCursor> shared = parts.ofType("sharedStrings");
    for (int number = 0; shared.isPresent() && shared.get().next(1); number++) {
      StruckText text = StruckText.in(shared.get());
      if (!text.equals(StruckText.LIKE_CELL)) {
        texts.put(number + "", text);
      }
    }
  }

  /** Of a file that is known to unpack to little. */
  static StruckCells of(byte[] bytes) throws IOException {
    try {
      return new StruckCells(bytes);
    } catch (XmlCursor.Refused broken) {
      throw new IOException(broken);
    }
  }

  private void readStyles(Optional<XmlCursor> sheet) throws XmlCursor.Refused {
    var struckFonts = new HashSet<String>();
    while (sheet.isPresent() && sheet.get().next(1)) {
      XmlCursor cursor = sheet.get();
      String list = cursor.name();
      for (int number = 0; cursor.next(2); number++) {
        if (list.equals("fonts") && StruckText.isStruckFont(cursor)) {
          struckFonts.add(number + "");
        } else if (list.equals("cellXfs") && struckFonts.contains(cursor.attribute("fontId"))) {
          styles.add(number + "");
        }
      }
    }
  }

  /** Those of a sheet that the workbook knows by this id. */
  List<Struck> in(String sheet) throws IOException {
    try {
      Optional<XmlCursor> found = parts.ofId(sheet);
      return found.isPresent() ? in(found.get()) : List.of();
    } catch (XmlCursor.Refused broken) {
      throw new IOException(broken);
    }
  }

  private List<Struck> in(XmlCursor sheet) throws XmlCursor.Refused {
    var found = new ArrayList<Struck>();
    while (sheet.next(1)) {
      boolean rows = sheet.name().equals("sheetData");
      int line = 0;
      while (rows && sheet.next(2)) {
        // Who leaves a number out means the next.
        line = WholeNumber.in(sheet.attribute("r")).orElse(line + 1);
        int column = -1;
        while (sheet.next(3)) {
          String address = sheet.attribute("r");
          column = address.isEmpty() ? column + 1 : new CellAddress(address).getColumn();
          boolean own =
              styles.contains(sheet.attribute("s").isEmpty() ? "0" : sheet.attribute("s"));
          StruckText text = text(sheet);
          if (text.anyStruck(own)) {
            found.add(new Struck(line, column, !text.anyPlain(own)));
          }
        }
      }
    }
    return found;
  }

  /** The text of the cell at hand, which the cursor leaves; numbers have the font of the cell. */
  private StruckText text(XmlCursor cell) throws XmlCursor.Refused {
    boolean shared = cell.attribute("t").equals("s");
    StruckText text = StruckText.LIKE_CELL;
    while (cell.next(4)) {
      if (cell.name().equals("is")) {
        text = StruckText.in(cell);
      } else if (shared && cell.name().equals("v")) {
        text = texts.getOrDefault(Rows.stripped(cell.text()), StruckText.LIKE_CELL);
      }
    }
    return text;
  }
}
