package lowfirst.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.function.Consumer;
import lowfirst.bench.web.RequestFuzz;
import lowfirst.intake.kind.PartKindWords;
import lowfirst.marking.MarkingLookup;
import lowfirst.marking.MarkingLookup.Question;
import lowfirst.sheet.csv.CsvWriter;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.sort.CodeDocument;
import lowfirst.sheet.text.TextWriter;

/** Everything that reads what a stranger wrote, each as one function of bytes that never throws. */
enum Reader {
  BOM(FuzzedKit.with("main/bom.csv")),
  PLACEMENTS(FuzzedKit.with("main/placements.csv")),
  BOARDS(FuzzedKit.with("boards.csv")),
  DATASHEETS(FuzzedKit.with("datasheets.csv")),
  RAILS(FuzzedKit.with("rails.csv")),
  SUPPLIES(FuzzedKit.with("supplies.csv")),
  CHANNELS(FuzzedKit.with("channels.csv")),
  DRIVERS(FuzzedKit.with("drivers.csv")),
  LOADS(FuzzedKit.with("loads.csv")),
  BAG(FuzzedKit.with("bag.csv")),
  SWAPS(FuzzedKit.with("swaps.csv")),
  SETTINGS(FuzzedKit.with("kit.properties")),
  COLUMNS(FuzzedKit.with("columns.properties")),
  WORKBOOK(FuzzedKit.with("main/bom.xlsx")),
  SHEET(FuzzedKit.withSheet()),
  PAGE(FuzzedKit.with("main/bom.html")),
  DESIGN(FuzzedKit.with("board.xml")),
  CODE(bytes -> look(new String(bytes, StandardCharsets.UTF_8))),
  REQUEST(RequestFuzz::read);

  private final Consumer<byte[]> reading;

  Reader(Consumer<byte[]> reading) {
    this.reading = reading;
  }

  /** Reads these bytes; throws only where the tool is at fault. */
  void read(byte[] bytes) {
    reading.accept(bytes);
  }

  /** Where its inputs are kept. */
  String folder() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** What {@code code} does with a marking. */
  private static void look(String marking) {
    Document answer =
        CodeDocument.of(
            MarkingLookup.of(marking, Question.plain()), PartKindWords.byTypeNumber(marking));
    TextWriter.write(answer, 100);
    CsvWriter.write(answer);
  }
}
