package lowfirst.sheet.loads;

import java.util.Arrays;
import java.util.List;
import lowfirst.channel.data.DatasheetSymbol;
import lowfirst.sheet.document.Block.Paragraph;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.document.Tables;

/** What may stand in the symbol column of datasheets.csv. */
public final class SymbolsDocument {
  private SymbolsDocument() {}

  /** The datasheet symbols that a finding understands, for whoever fills in datasheets.csv. */
  public static Document of() {
    var rows =
        Arrays.stream(DatasheetSymbol.values())
            .map(symbol -> Tables.row(symbol.text(), symbol.meaning(), symbol.column()))
            .toList();
    return new Document(
        "Datasheet symbols",
        "",
        List.of(
            new Paragraph(
                "What the columns symbol and condition of datasheets.csv may hold for a finding;"
                    + " a condition is written as VGS=5V, ID=25A, TJ=25C. Any other symbol is"
                    + " kept and not used here."),
            new Table(
                "symbols",
                List.of(
                    Tables.words("symbol", 14),
                    Tables.words("meaning and conditions", 66),
                    Tables.words("column that counts", 20)),
                rows)));
  }
}
