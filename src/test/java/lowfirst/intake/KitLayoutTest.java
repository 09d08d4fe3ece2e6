package lowfirst.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lowfirst.board.Board;
import lowfirst.board.Placement;
import lowfirst.board.Side;
import lowfirst.problem.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which boards a folder of files holds, and which file is which table. */
class KitLayoutTest {
  private static final String BOM = "designators,value\nR1,1k\n";
  private static final String TWO = "designators,value\nR1,1k\nR2,2k\n";
  private static final String PLACED = "designator,x mm,y mm\nR1,1,2\nR2,30,40\n";

  @Test
  void each_folder_with_tables_is_a_board_of_its_name_and_reports_are_none() {
    KitReading reading =
        KitTables.read(
            "driver/bom.csv", BOM,
            "lamp/bom.csv", TWO,
            "lamp/placements.csv", PLACED,
            "notes/readme.md", "nothing",
            "reports/bom.csv", BOM);
    assertEquals(List.of("driver 1 0", "lamp 2 2"), shown(reading));
  }

  @Test
  void tables_beside_the_folders_are_the_one_board_of_the_kits_name() {
    assertEquals(List.of("kit 1 0"), shown(KitTables.read("bom.csv", BOM, "lamp/bom.csv", TWO)));
  }

  @Test
  void a_kit_without_tables_says_what_to_put_there() {
    KitReading reading = KitTables.read("readme.md", "nothing");
    assertEquals(List.of(), shown(reading));
    assertEquals(1, count(reading, Kind.FILE_MISSING));
  }

  @Test
  void a_table_that_tells_nothing_is_named_when_no_other_is_there() {
    KitReading reading = KitTables.read("stuff.csv", "a,b\nred,blue\n", "more.txt", "red\n");
    assertEquals(
        List.of(
            "more.txt: neither names nor headers tell which of more.txt, stuff.csv is the BOM or"
                + " the placement list; name the BOM bom.csv and the placement list placements.csv"),
        KitTables.problems(reading));
  }

  @ParameterizedTest
  @CsvSource({"board.mnt, TOP", "board.mnb, BOTTOM", "unterseite.csv, BOTTOM", "xy-top.csv, TOP"})
  void the_name_of_a_placement_list_may_tell_its_side(String name, Side side) {
    KitReading reading = KitTables.read(name, PLACED, "bom.csv", TWO);
    assertEquals(
        List.of(side, side),
        reading.kit().boards().get(0).placements().stream().map(Placement::side).toList());
  }

  @Test
  void of_several_boms_the_first_is_used_and_said() {
    KitReading two = KitTables.read("parts-a.csv", BOM, "parts-b.csv", TWO);
    assertEquals(List.of("kit 1 0"), shown(two));
    assertEquals(1, count(two, Kind.COLUMN_AMBIGUOUS));
    KitReading named = KitTables.read("parts-a.csv", BOM, "bom.csv", TWO);
    assertEquals(List.of("kit 2 0"), shown(named));
    assertEquals(0, count(named, Kind.COLUMN_AMBIGUOUS));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "parts list.csv, 1 0",
    "Stückliste.csv, 1 0",
    "nomenclature.txt, 1 0",
    "unnamed.csv, 1 0",
    "unnamed.md, none",
    "swaps.csv, none",
    ".csv, none",
  })
  void a_bom_is_known_by_its_name_or_its_header(String file, String read) {
    assertEquals(
        read.equals("none") ? List.of() : List.of("kit " + read), shown(KitTables.read(file, BOM)));
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "bom-pos.csv",
        "pick.csv",
        "centroid.txt",
        "x-xy-y.csv",
        "anything.csv",
        "cpl.tsv"
      })
  void a_table_with_coordinates_is_a_placement_list_whatever_it_is_called(String file) {
    assertEquals(List.of("kit 0 2"), shown(KitTables.read(file, PLACED)));
  }

  @ParameterizedTest(name = "{0}, {1}: {2}")
  @CsvSource({
    "R1 10.5 20 90 1k DIN0207, C1 30.5 20 0 100n DISC5, kit 0 2",
    "R1 10.5 20 0 1k DIN0207, C1 30.5 20 0 100n DISC5, ''",
    "R1 10.5 20 12 1k DIN0207, C1 30.5 20 34 100n DISC5, ''",
    "R1 10.5 1k DIN0207, C1 30.5 100n DISC5, ''",
  })
  void a_table_without_a_header_is_a_placement_list_where_parts_are_turned(
      String first, String second, String board) {
    assertEquals(
        Stream.of(board).filter(one -> !one.isEmpty()).toList(),
        shown(KitTables.read("list.csv", first + "\n" + second + "\n")));
  }

  @Test
  void unturned_parts_without_a_header_are_placed_on_the_side_that_the_files_name_tells() {
    KitReading reading =
        KitTables.read(
            "bom.csv", TWO,
            "board top.txt", "R1 10.5 20 90 1k DIN0207\n",
            "board bot.txt", "R2 30.5 20 0 2k DIN0207\n");
    assertEquals(
        List.of("R2 BOTTOM", "R1 TOP"),
        reading.kit().boards().get(0).placements().stream()
            .map(placement -> placement.designator() + " " + placement.side())
            .toList());
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"pos.csv", "placement.csv", "xy.txt"})
  void a_bom_under_the_name_of_a_placement_list_is_a_bom(String file) {
    assertEquals(List.of("kit 1 0"), shown(KitTables.read(file, BOM)));
  }

  /** What an item's number, its quantity or price might be along x and y. */
  @ParameterizedTest
  @CsvSource({
    "list.csv, Pos.;Menge;Bezeichner;Wert;Bauform, 3;2;R1;1k;0207|4;1;C1;2n2;RM5",
    "list.csv, Pos.;Bezeichner;Wert;Menge;Preis, 3;R1;1k;1;0.05|4;C1;2n2;1;0.15",
    "Stückliste.csv, Pos.;Bezeichner;Wert;Preis;Menge, 3;R1;1k;0.05;1|4;C1;2n2;0.15;1"
  })
  void a_list_that_counts_its_parts_is_a_bom_whatever_other_numbers_it_has(
      String file, String header, String rows) {
    assertEquals(
        List.of("kit 2 0"),
        shown(KitTables.read(file, header + "\n" + rows.replace('|', '\n') + "\n")));
  }

  /** Nobody knows the words over its coordinates. */
  @Test
  void a_list_with_two_columns_of_numbers_that_counts_nothing_is_a_placement_list() {
    assertEquals(
        List.of("kit 0 2"),
        shown(
            KitTables.read(
                "list.csv",
                "Bezeichner;Wert;Bauform;waagerecht;senkrecht\nR1;1k;0207;10.5;20.25\n"
                    + "C1;2n2;RM5;30.1;12.4\n")));
  }

  @Test
  void one_table_with_quantities_and_coordinates_is_both() {
    assertEquals(
        List.of("kit 3 3"),
        shown(
            KitTables.read(
                "assembly.csv",
                "Designator,Value,X (mm),Y (mm),Side,Qty,Mounted\nR1,1k,10,10,top,1,yes\n"
                    + "R2,2k,10,15,top,1,no\nC1,100n,20,10,top,1,yes\n")));
  }

  @Test
  void a_given_bom_and_placement_list_are_the_board_and_nothing_else_is_looked_for() {
    var files = KitTables.files("a.csv", BOM, "b.csv", PLACED, "bom.csv", TWO).contents();
    var given = new KitFiles.Given(Optional.of("a.csv"), List.of("b.csv", "absent.csv"));
    assertEquals(
        List.of("kit 1 2"),
        shown(KitReader.read(new KitFiles("kit", files, List.of(), Optional.of(given)))));
    var absent = new KitFiles.Given(Optional.of("absent.csv"), List.of("b.csv"));
    assertEquals(
        List.of("kit 0 2"),
        shown(KitReader.read(new KitFiles("kit", files, List.of(), Optional.of(absent)))));
  }

  // --- boards.csv

  @Test
  void a_listed_board_has_its_files_count_and_size() {
    KitReading reading =
        KitTables.read(
            "boards.csv",
            "board,count,bom,placements,width (inch),height,left,bottom\n"
                + "main,3,sub\\parts.csv,,4,60 mm,-5,2\n"
                + "main 2,,,main/placements.csv,50,,,\n",
            "sub/parts.csv",
            TWO,
            "main/bom.csv",
            BOM,
            "main/placements.csv",
            PLACED);
    List<Board> boards = reading.kit().boards();
    assertEquals(List.of("main 2 2", "main 2 0 2"), shown(reading));
    assertEquals(List.of(3, 1), boards.stream().map(Board::count).toList());
    // 4 inch are 101.6 mm.
    assertEquals(Optional.of(new Board.Size(-5, 2, 101.6, 60)), boards.get(0).size());
    assertEquals(Optional.empty(), boards.get(1).size(), "half a size is none");
  }

  @Test
  void a_size_without_more_lies_at_the_origin() {
    KitReading reading =
        KitTables.read("boards.csv", "board,bom,width,height\nb,bom.csv,80,60\n", "bom.csv", BOM);
    assertEquals(Optional.of(new Board.Size(0, 0, 80, 60)), reading.kit().boards().get(0).size());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "../bom.csv, OUTSIDE_THE_KIT",
    "/etc/bom.csv, OUTSIDE_THE_KIT",
    "C:\\bom.csv, OUTSIDE_THE_KIT",
    "sub/../../bom.csv, OUTSIDE_THE_KIT",
    "absent.csv, FILE_MISSING",
  })
  void a_path_that_leads_out_or_nowhere_is_said_in_its_cell(String path, Kind kind) {
    KitReading reading = KitTables.read("boards.csv", "board,bom\nmain," + path + "\n");
    assertTrue(
        reading.problems().stream()
            .anyMatch(p -> p.kind() == kind && p.place().line() == 2 && p.place().column() == 2),
        () -> KitTables.problems(reading).toString());
    assertEquals(List.of("main 0 0"), shown(reading));
  }

  @Test
  void a_board_without_a_name_is_left_out_and_a_size_that_is_none_is_said() {
    KitReading reading =
        KitTables.read(
            "boards.csv",
            "board,bom,width,height\n,bom.csv,1,1\nmain,bom.csv,wide,60\n",
            "bom.csv",
            BOM);
    assertEquals(List.of("main 1 0"), shown(reading));
    assertEquals(1, count(reading, Kind.CELL_EMPTY));
    assertEquals(1, count(reading, Kind.CELL_UNREADABLE));
  }

  /** Name, items and placements of each board. */
  private static List<String> shown(KitReading reading) {
    var lines = new ArrayList<String>();
    for (Board board : reading.kit().boards()) {
      lines.add(board.name() + " " + board.bomLines().size() + " " + board.placements().size());
    }
    return lines;
  }

  private static long count(KitReading reading, Kind... kinds) {
    return reading.problems().stream().filter(p -> Arrays.asList(kinds).contains(p.kind())).count();
  }

  @Test
  void a_bom_in_a_form_that_is_not_read_is_named() {
    assertEquals(
        List.of("my-bom.xls"),
        KitTables.read("my-bom.xls", "", "photo.pdf", "").problems().stream()
            .filter(problem -> problem.kind() == Kind.FILE_MISSING)
            .map(problem -> problem.place().file())
            .toList());
  }
}
