package lowfirst.intake.table;

import java.util.List;
import java.util.Optional;
import lowfirst.intake.text.TextOfFile;
import lowfirst.intake.workbook.WebPage;
import lowfirst.intake.workbook.Workbook;
import lowfirst.problem.Problem;

/**
 * What a file holds, whichever kind of table it turns out to be.
 *
 * @param sheets those of a spreadsheet, or the tables of a web page; none of any other text
 * @param text without odd notations; empty where there are sheets
 * @param form what a person calls the file's form, or its encoding
 * @param textProblems what is wrong with the text; a workbook has its own
 */
public record DecodedFile(
    String file, Optional<Workbook> sheets, String text, String form, List<Problem> textProblems) {

  /** The file that these bytes are; never throws. */
  public static DecodedFile of(String file, byte[] bytes) {
    if (Workbook.isOne(bytes)) {
      return ofSheets(file, Workbook.of(file, bytes), "spreadsheet (Office Open XML)");
    }
    TextOfFile written = TextOfFile.of(file, bytes);
    if (written.signs().mayBeAnyOf("<") && WebPage.isOne(written.text())) {
      return ofSheets(
          file, WebPage.of(file, written.text()), "web page (HTML), " + written.encoding());
    }
    TextOfFile plain = written.plain();
    return new DecodedFile(
        file, Optional.empty(), plain.text(), plain.encoding(), plain.problems());
  }

  private static DecodedFile ofSheets(String file, Workbook sheets, String form) {
    return new DecodedFile(file, Optional.of(sheets), "", form, List.of());
  }

  /** Whether there is nothing to read, because the file could not be decoded. */
  boolean isEmpty() {
    return sheets.map(workbook -> !workbook.problems().isEmpty()).orElse(text.isEmpty());
  }
}
