package lowfirst.sheet.csv;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Document;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * The tables of a document as one table for machines: RFC 4180, comma, CRLF, every record as long
 * as the header.
 *
 * <p>The first two columns say where a record stood: {@code section} (the headings above it) and
 * {@code table} (its caption). The columns of all tables follow, each name once.
 */
public final class CsvWriter {

  /** What a spreadsheet would take for a formula (OWASP, "CSV Injection"), wide forms included. */
  private static final Pattern FORMULA = Pattern.compile("(?s)^[=+\\-@\\t\\r\\n＝＋－＠].*");

  /** A number, a number with its unit, or a lone dash: signs that no spreadsheet computes with. */
  private static final Pattern HARMLESS =
      Pattern.compile("[+-]?(\\d[\\d.,]*([eE][+-]?\\d+)?( ?[\\p{L}Ω°%µ²/]+)?)?");

  private static final Map<String, String> SPELLED =
      Map.of("Ω", "ohm", "µ", "u", "μ", "u", "°", "deg", "²", "2", "%", "percent", "℃", "degc");

  private CsvWriter() {}

  /** The document's tables as CSV; just the header line when it has none. */
  public static String write(Document document) {
    var records = new ArrayList<List<String>>();
    List<Titled> tables = tables(document);
    List<String> columns = columns(tables);
    for (Titled titled : tables) {
      List<String> names = names(titled.table());
      for (Table.Row row : titled.table().rows()) {
        var record = new ArrayList<>(List.of(titled.section(), titled.table().caption()));
        for (String column : columns) {
          int at = names.indexOf(column);
          record.add(at < 0 ? "" : row.cells().get(at).text().replace('\u00a0', ' '));
        }
        records.add(record);
      }
    }
    return print(columns, records);
  }

  private static String print(List<String> columns, List<List<String>> records) {
    var text = new StringBuilder();
    try (var printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
      printer.print("section");
      printer.print("table");
      printer.printRecord(columns);
      for (List<String> record : records) {
        printer.printRecord(record.stream().map(CsvWriter::harmless));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  /** A table with the headings that it stands under. */
  private record Titled(String section, Table table) {}

  private static List<Titled> tables(Document document) {
    var tables = new ArrayList<Titled>();
    String chapter = "";
    String section = "";
    for (Block block : document.blocks()) {
      if (block instanceof Block.Heading heading) {
        chapter = heading.level() <= 2 ? heading.text() : chapter;
        section = heading.level() <= 2 ? "" : " / " + heading.text();
      } else if (block instanceof Table table) {
        tables.add(new Titled(chapter + section, table));
      }
    }
    return tables;
  }

  private static List<String> columns(List<Titled> tables) {
    Set<String> columns = new LinkedHashSet<>();
    tables.forEach(titled -> columns.addAll(names(titled.table())));
    return List.copyOf(columns);
  }

  /** A name for each column, none twice. */
  private static List<String> names(Table table) {
    var names = new ArrayList<String>();
    IntStream.range(0, table.columns().size())
        .forEach(
            column -> {
              String name = machineName(table.columns().get(column).header());
              boolean taken =
                  name.isEmpty()
                      || names.contains(name)
                      || name.equals("section")
                      || name.equals("table");
              names.add(taken ? (name + "_" + (column + 1)).replaceFirst("^_", "column_") : name);
            });
    return names;
  }

  /** A header that programs read: {@code Reading (Ω)} becomes {@code reading_ohm}. */
  static String machineName(String header) {
    String text = header;
    for (Map.Entry<String, String> sign : SPELLED.entrySet()) {
      text = text.replace(sign.getKey(), sign.getValue());
    }
    return text.toLowerCase(Locale.ROOT)
        .replaceAll("[^\\p{L}\\p{N}]+", "_")
        .replaceAll("^_+|_+$", "");
  }

  /** The text with an apostrophe before it where a spreadsheet would start to compute. */
  public static String harmless(String cell) {
    return Optional.of(cell)
        .filter(text -> FORMULA.matcher(text).matches() && !HARMLESS.matcher(text).matches())
        .map(text -> "'" + text)
        .orElse(cell);
  }
}
