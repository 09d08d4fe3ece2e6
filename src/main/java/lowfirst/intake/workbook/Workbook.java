package lowfirst.intake.workbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lowfirst.intake.cell.FittedSigns;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.Row;
import lowfirst.intake.text.Rows;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ExcelReaderException;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Sheet;
import org.dhatim.fastexcel.reader.SheetVisibility;

/**
 * A spreadsheet file (ECMA-376, Office Open XML) as rows of text.
 *
 * @param sheets each sheet that is shown, without blank rows; hidden ones where none is
 * @param problems why the file could not be read; then there are no sheets
 */
public record Workbook(List<Grid> sheets, List<Problem> problems) {

  /**
   * The rows of a sheet.
   *
   * @param hidden the numbers of those that are not shown
   * @param struck the cells that are struck through, of all rows
   */
  public record Grid(
      String name, List<Row> rows, List<Integer> hidden, List<StruckCells.Struck> struck) {

    /** By its number, each row below the header that no column says is not fitted. */
    Map<Integer, Row> fitted(Header header) {
      var fitted = new HashMap<Integer, Row>();
      for (Row row : rows.subList(header.index() + 1, rows.size())) {
        String yes = row.cell(header.cellOf(Column.FITTED));
        String no = row.cell(header.cellOf(Column.NOT_FITTED));
        if (!FittedSigns.sayLeftOut(yes, no)) {
          fitted.put(row.line(), row);
        }
      }
      return fitted;
    }
  }

  /** So many bytes a spreadsheet may grow to when unpacked; a table of parts is far smaller. */
  private static final long MOST_UNPACKED = 64L << 20;

  /** A sheet of parts has no more rows or columns than this. */
  private static final int MOST_ROWS = 300_000;

  private static final int MOST_COLUMNS = 256;

  /** Digits that a spreadsheet keeps of a number (IEEE 754 double). */
  private static final MathContext DIGITS = new MathContext(15);

  /** With what a cell's number is shown as: a date, a share of hundred. */
  private static final ReadingOptions WITH_FORMATS = new ReadingOptions(true, false);

  /** Text in quotes, colours and locales in brackets, and signs that stand for themselves. */
  private static final Pattern NO_FORMAT = Pattern.compile("\"[^\"]*\"|\\[[^\\]]*]|\\\\.");

  /** Nothing but digits, with zeros before them and a text around: 0805 and R1 may be numbers. */
  private static final Pattern PADDED =
      Pattern.compile("(\"[^\"]{1,9}\")?(0{1,9})(\"[^\"]{1,9}\")?");

  private static final String DOCTYPE = "<!DOCTYPE";

  public Workbook {
    sheets = List.copyOf(sheets);
    problems = List.copyOf(problems);
  }

  /** Whether these bytes are a packed file, as spreadsheets are. */
  public static boolean isOne(byte[] bytes) {
    return bytes.length > 3 && bytes[0] == 'P' && bytes[1] == 'K' && bytes[2] == 3 && bytes[3] == 4;
  }

  /** The sheets of a file; never throws. */
  public static Workbook of(String file, byte[] bytes) {
    try {
      Look look = Look.at(bytes);
      if (!look.harmless()) {
        return faulty(file, Kind.FILE_TOO_LARGE, "the spreadsheet unpacks to more than 64 MB");
      }
      return new Workbook(sheets(bytes, look.mayStrike()), List.of());
    } catch (IOException | RuntimeException damaged) {
      return faulty(file, Kind.NOT_TEXT, "this can't be read as a spreadsheet");
    }
  }

  /** The parts of a packed file by its directory, as the library that reads the sheets takes it. */
  static ZipFile packed(byte[] bytes) throws IOException {
    return ZipFile.builder().setSeekableByteChannel(new SeekableInMemoryByteChannel(bytes)).get();
  }

  /**
   * What shows while a file is unpacked and nothing kept: a bomb by its size, an entity trick by
   * its DOCTYPE, struck letters by a word.
   */
  private record Look(boolean harmless, boolean mayStrike) {
    static Look at(byte[] bytes) throws IOException {
      byte[] buffer = new byte[1 << 16];
      long total = 0;
      boolean strikes = false;
      try (ZipFile zip = packed(bytes)) {
        for (ZipArchiveEntry entry : Collections.list(zip.getEntries())) {
          String before = "";
          try (InputStream part = opened(zip, entry)) {
            for (int read = part.read(buffer); read >= 0; read = part.read(buffer)) {
              total += read;
              if (total > MOST_UNPACKED) {
                return new Look(false, false);
              }
              // Without the zeros that UTF-16 puts between the letters of a mark.
              String letters =
                  new String(buffer, 0, read, StandardCharsets.ISO_8859_1).replace("\0", "");
              String chunk = before + letters;
              if (chunk.contains(DOCTYPE)) {
                throw new IOException("a document type has no place in a spreadsheet");
              }
              strikes = strikes || chunk.contains(StruckCells.SIGN);
              before = chunk.substring(Math.max(0, chunk.length() - DOCTYPE.length()));
            }
          }
        }
      }
      return new Look(true, strikes);
    }

    /** ECMA-376 part 2, annex B, allows no other packing; some need libraries of their own. */
    private static InputStream opened(ZipFile zip, ZipArchiveEntry entry) throws IOException {
      if (entry.getMethod() != ZipArchiveEntry.STORED
          && entry.getMethod() != ZipArchiveEntry.DEFLATED) {
        throw new IOException("packed as no spreadsheet is");
      }
      return zip.getInputStream(entry);
    }
  }

  private static List<Grid> sheets(byte[] bytes, boolean mayStrike) throws IOException {
    Optional<StruckCells> struck =
        mayStrike ? Optional.of(StruckCells.of(bytes)) : Optional.empty();
    var sheets = new ArrayList<Grid>();
    var hidden = new ArrayList<Grid>();
    try (var workbook = opened(bytes)) {
      for (Sheet sheet : workbook.getSheets().toList()) {
        try (Stream<org.dhatim.fastexcel.reader.Row> rows = sheet.openStream()) {
          boolean shown = sheet.getVisibility() == SheetVisibility.VISIBLE;
          List<StruckCells.Struck> cells =
              struck.isPresent() ? struck.get().in(sheet.getId()) : List.of();
          (shown ? sheets : hidden).add(grid(sheet.getName(), rows.limit(MOST_ROWS), cells));
        }
      }
    }
    return sheets.isEmpty() ? hidden : sheets;
  }

  private static Grid grid(
      String name,
      Stream<org.dhatim.fastexcel.reader.Row> written,
      List<StruckCells.Struck> struck) {
    var rows = new ArrayList<Row>();
    var hidden = new ArrayList<Integer>();
    // Where the file leaves the numbers out, the library counts from 0.
    boolean[] zero = {false};
    written.forEach(
        one -> {
          zero[0] |= one.getRowNum() == 0;
          Row row = row(one, one.getRowNum() + (zero[0] ? 1 : 0));
          if (!row.isBlank()) {
            rows.add(row);
            if (one.isHidden()) {
              hidden.add(row.line());
            }
          }
        });
    return new Grid(name, rows, hidden, struck);
  }

  /** Without formats where the file has none. */
  private static ReadableWorkbook opened(byte[] bytes) throws IOException {
    try {
      return new ReadableWorkbook(new ByteArrayInputStream(bytes), WITH_FORMATS);
    } catch (ExcelReaderException noStyles) {
      return new ReadableWorkbook(new ByteArrayInputStream(bytes));
    }
  }

  private static Row row(org.dhatim.fastexcel.reader.Row row, int line) {
    var cells = new ArrayList<String>();
    int width = Math.min(row.getCellCount(), MOST_COLUMNS);
    for (int column = 0; column < width; column++) {
      cells.add(row.getOptionalCell(column).map(Workbook::text).orElse(""));
    }
    return new Row(line, cells);
  }

  private static String text(Cell cell) {
    if (cell.getType() == CellType.STRING) {
      return Rows.stripped(cell.asString());
    }
    String raw = cell.getRawValue() == null ? "" : cell.getRawValue();
    if (raw.isEmpty() && cell.getType() == CellType.FORMULA) {
      // Whoever saved it did not compute it: better seen than empty.
      return "=" + cell.getFormula();
    }
    try {
      return raw.length() > 40 ? raw : shown(new BigDecimal(raw), cell);
    } catch (NumberFormatException noNumber) {
      return Rows.stripped(raw);
    }
  }

  /** What a person sees where the number alone means something else. */
  private static String shown(BigDecimal number, Cell cell) {
    String format = NO_FORMAT.matcher(raw(cell)).replaceAll("");
    if (format.indexOf('%') >= 0) {
      return plain(number.movePointRight(2)) + " %";
    }
    Matcher padded = PADDED.matcher(raw(cell));
    if (padded.matches() && number.signum() >= 0 && number.stripTrailingZeros().scale() <= 0) {
      String digits = plain(number);
      String zeros = "0".repeat(Math.max(0, padded.group(2).length() - digits.length()));
      return literal(padded.group(1)) + zeros + digits + literal(padded.group(3));
    }
    boolean isDate = format.matches("(?i).*[dy].*");
    return isDate ? cell.asDate().toLocalDate().toString() : plain(number);
  }

  private static String raw(Cell cell) {
    return cell.getDataFormatString() == null ? "" : cell.getDataFormatString();
  }

  private static String literal(String quoted) {
    return quoted == null ? "" : quoted.replace("\"", "");
  }

  private static String plain(BigDecimal number) {
    if (Math.abs(number.precision() - number.scale()) > 30) {
      return number.toString();
    }
    return number.signum() == 0 ? "0" : number.round(DIGITS).stripTrailingZeros().toPlainString();
  }

  private static Workbook faulty(String file, Kind kind, String message) {
    return new Workbook(
        List.of(),
        List.of(
            new Problem(
                kind,
                Place.ofFile(file),
                message,
                "export the table as CSV (comma-separated text)")));
  }
}
