package lowfirst.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.ColumnMap;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.Separator;
import lowfirst.intake.column.TableKind;
import lowfirst.intake.table.HeaderMatch;
import lowfirst.intake.text.Rows;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each dialect is read as its expectations say, with no option given. */
class DialectsTest {
  private static final List<ColumnMap> MAPS =
      List.of(
          ColumnMap.empty(),
          new ColumnMap(Map.of("bom.designators", "1", "placements.position", "2")),
          new ColumnMap(Map.of("placements.x", "2", "placements.y", "3", "bom.fitted", "4")));

  @ParameterizedTest
  @MethodSource("folders")
  void each_dialect_is_read_with_no_option_given(Path dialect) {
    assertEquals(
        String.join("\n", Dialects.expected(dialect)),
        String.join("\n", Dialects.shown(Dialects.read(Dialects.utf8(Dialects.tables(dialect))))));
  }

  /** Or the search for the header would pass over it. */
  @ParameterizedTest
  @MethodSource("folders")
  void no_row_scores_more_than_its_words_let_expect(Path dialect) {
    Dialects.tables(dialect)
        .forEach(
            (file, text) -> {
              for (Separator separator : List.of(Separator.COMMA, Separator.SEMICOLON)) {
                List<Row> rows = Rows.separated(file, text, separator).rows();
                for (TableKind kind : TableKind.values()) {
                  for (ColumnMap map : MAPS) {
                    Map<Column, String> told = map.columns(kind, file);
                    var scores = new HashMap<String, Integer>();
                    for (int i = 0; i < rows.size(); i++) {
                      int score = HeaderMatch.at(kind, told, rows, i).score(kind);
                      int highest = HeaderMatch.highestScore(kind, told, rows, i, scores);
                      assertTrue(score <= highest, file + ":" + rows.get(i).line() + " " + kind);
                    }
                  }
                }
              }
            });
  }

  @Test
  void there_are_twelve_dialects_at_least() throws Exception {
    assertTrue(folders().size() >= 12);
  }

  static List<Path> folders() throws IOException, URISyntaxException {
    return Dialects.folders();
  }
}
