package lowfirst.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The built jar as a person starts it: one process a command. */
class JarIT {
  private static final Path JAR = Path.of(System.getProperty("lowfirst.jar"));
  private static final Path KITS = Path.of("sample-boms").toAbsolutePath();
  private static final String KIT = KITS.resolve("bell-player").toString();
  private static final long LONGEST_SECONDS = 300;

  @TempDir private Path here;

  /** What a process left behind. */
  private record Ended(int status, String out, String err) {}

  @Test
  void every_service_in_the_jar_is_provided_by_the_module_of_the_image_too() throws IOException {
    String declared = Files.readString(Path.of("src", "packaging", "module-info.java"));
    String module = declared.replaceAll("\\s+", " ");
    int services = 0;
    try (FileSystem jar = FileSystems.newFileSystem(JAR);
        Stream<Path> files = Files.list(jar.getPath("META-INF", "services"))) {
      for (Path file : files.toList()) {
        String service = "provides " + file.getFileName() + " with ";
        assertTrue(module.contains(service), service);
        String named = module.substring(module.indexOf(service));
        List<String> providers =
            List.of(named.substring(service.length(), named.indexOf(';')).split(", "));
        assertEquals(Set.copyOf(Files.readAllLines(file)), Set.copyOf(providers), service);
        services++;
      }
    }
    assertTrue(services > 0);
  }

  @Test
  void demo_does_the_whole_job_in_an_empty_folder_and_twice_the_same() {
    Ended first = lowfirst("demo");
    assertEquals("", first.err());
    assertEquals(0, first.status());
    List<String> written = first.out().lines().filter(line -> line.startsWith("written")).toList();
    // Six verbs leave a text, and the sheets come as one PDF each.
    assertTrue(written.size() > 6, first.out());
    for (String line : written) {
      Path file = here.resolve(line.substring("written".length()).strip());
      assertTrue(Files.isRegularFile(file), file.toString());
      String start = start(file);
      assertEquals(file.toString().endsWith(".pdf"), start.startsWith("%PDF-"), file.toString());
    }
    assertTrue(first.out().contains("29 of 32 channels carry"), first.out());
    assertTrue(
        first.out().contains("2 x 10 kΩ resistor, 1 x 22 pF ceramic capacitor"), first.out());
    assertTrue(first.out().contains("BP-N100L in place of BP-N60L: fits"), first.out());
    assertTrue(first.out().contains("go on with step 2"), first.out());
    assertEquals(first, lowfirst("demo"));
  }

  @Test
  void a_table_changed_after_the_demo_is_used_by_the_next_one() throws IOException {
    lowfirst("demo");
    Path bag = here.resolve("reports/sample-boms/bell-player/bag.csv");
    Files.writeString(bag, Files.readString(bag).replace("22p,1,", "22p,2,"));
    Ended again = lowfirst("demo");
    assertTrue(again.out().contains("Changed by you, and used as they are: bag.csv."), again.out());
    assertTrue(again.out().contains("Short: 2 x 10 kΩ resistor."), again.out());
  }

  @Test
  void check_finds_nothing_in_the_sample_kit_and_counts_its_rows() throws IOException {
    Ended check = lowfirst("check", KIT);
    assertEquals(0, check.status());
    for (String board : List.of("controller", "driver")) {
      String row = line(check.out(), board);
      assertTrue(row.contains(rows(board + "/placements.csv") + " placements"), row);
    }
    // The driver's swap makes one line more of its BOM, the controller has none.
    String controller = line(check.out(), "controller");
    assertTrue(controller.contains(rows("controller/bom.csv") + " BOM lines"), controller);
    assertEquals("found       0 faults, 0 cautions, 0 notes", line(check.out(), "found"));
  }

  @Test
  void check_reports_every_file_of_the_flawed_kit_that_has_a_flaw() throws IOException {
    Path flawed = KITS.resolve("bell-player-flawed");
    Ended check = lowfirst("check", flawed.toString());
    assertEquals(1, check.status());
    for (String row : Files.readAllLines(flawed.resolve("FAULTS.csv")).subList(1, 30)) {
      String file = row.split(",")[1];
      assertTrue(check.out().lines().anyMatch(file::equals), file);
    }
  }

  @Test
  void steps_fit_every_part_of_every_unit_once() throws IOException {
    // one controller and two drivers
    int parts = rows("controller/placements.csv") + 2 * rows("driver/placements.csv");
    Ended steps = lowfirst("steps", KIT);
    assertEquals(0, steps.status());
    assertTrue(steps.out().contains("\n" + parts + " parts in "), steps.out().substring(0, 300));
    assertTrue(lowfirst("steps", KIT, "--csv").out().lines().count() > 60);
  }

  @Test
  void sheets_names_the_files_that_it_writes() {
    Ended sheets = lowfirst("sheets", KIT);
    assertEquals(0, sheets.status());
    List<String> files = sheets.out().lines().toList();
    for (String unit : List.of("controller-1", "driver-1", "driver-2")) {
      assertTrue(files.stream().anyMatch(file -> file.endsWith("sign-off-" + unit + ".pdf")), unit);
    }
    files.forEach(file -> assertTrue(start(here.resolve(file)).startsWith("%PDF-"), file));
  }

  @Test
  void ticks_are_kept_between_processes_and_undone_by_one_more() {
    Ended tick = lowfirst("tick", KIT, "R42", "--state", "soldered", "--by", "Ada");
    assertEquals(0, tick.status(), tick.err());
    String history = lowfirst("progress", KIT, "--history", "R42").out();
    assertTrue(history.contains("soldered") && history.contains("Ada"), history);
    assertEquals(0, lowfirst("tick", KIT, "--undo").status());
    Ended progress = lowfirst("progress", KIT);
    assertEquals(0, progress.status());
    assertTrue(progress.out().contains("Go on with step 1 "), progress.out());
  }

  @Test
  void loads_finds_the_three_channels_that_are_not_in_order() {
    Ended loads = lowfirst("loads", KIT);
    assertEquals(1, loads.status());
    String summary = "32 channels: 29 carry, 2 overloaded, 1 undecided";
    assertTrue(loads.out().contains(summary), loads.out().substring(0, 400));
    assertTrue(lowfirst("loads", KIT, "--csv").out().contains("driver-2.10"));
  }

  @Test
  void sort_finds_what_is_short_and_code_reads_bands() {
    assertEquals(1, lowfirst("sort", KIT).status());
    Ended code = lowfirst("code", "brown", "black", "orange", "gold");
    assertEquals(0, code.status());
    assertTrue(code.out().contains("10 kΩ"), code.out());
  }

  @Test
  void swap_answers_by_its_exit_status() {
    assertEquals(0, lowfirst("swap", KIT, "Q15", "BP-N100L").status());
    assertEquals(1, lowfirst("swap", KIT, "R1", "10k", "--board", "driver").status());
  }

  @Test
  void mistakes_are_told_in_words_with_their_own_exit_status() {
    for (Ended ended : List.of(lowfirst(), lowfirst("frobnicate"), lowfirst("tick", KIT, "R999"))) {
      assertEquals(2, ended.status(), ended.err());
      assertEquals("", ended.out());
    }
    Ended missing = lowfirst("check", "no-such-kit");
    assertEquals(3, missing.status());
    assertTrue(missing.err().contains("no-such-kit"), missing.err());
    assertFalse(missing.err().contains("\tat "), missing.err());
  }

  /**
   * Whether this test can make a folder of any name; a process in a poorer locale can't open it.
   */
  private static boolean namesAnything() {
    return System.getProperty("sun.jnu.encoding", "").equals("UTF-8");
  }

  /** How a system may have set up Java: its own encodings, and the locale that they follow. */
  @ParameterizedTest(name = "{0} in {1}")
  @CsvSource({
    "-Dfile.encoding=Cp1252, C.UTF-8",
    "-Dfile.encoding=UTF-16, C.UTF-8",
    "-Dsun.jnu.encoding=Cp1252, C.UTF-8",
    "-Dfile.encoding=US-ASCII, C",
  })
  void tables_and_output_are_utf_8_whatever_the_system_says(String option, String locale)
      throws IOException {
    boolean named = namesAnything() && locale.endsWith("UTF-8");
    String name = named ? "Kübel µΩ" : "kit";
    Path kit = Files.createDirectory(here.resolve(name));
    Files.writeString(
        kit.resolve("bom.csv"),
        "designators,quantity,value,package\nR1,1,4.7 kΩ,DIN0207\nC1,1,10 µF,CP-5x11-P2\n");
    Files.writeString(kit.resolve("placements.csv"), "designator,x mm,y mm\nR1,10,10\nC1,30,10\n");
    List<String> java = List.of("-XX:TieredStopAtLevel=1", option);
    Ended steps = started(java, locale, here, "steps", name);
    assertEquals("", steps.err());
    assertEquals(0, steps.status());
    for (String text : List.of("4.7 kΩ", "10 µF", name)) {
      assertTrue(steps.out().contains(text), steps.out());
    }
    // A column map is remembered in a file, with the letters of the command line.
    assertEquals(
        0, started(java, locale, kit, "steps", ".", "--column", "bom.value=value").status());
    assertTrue(Files.readString(kit.resolve("columns.properties")).contains("bom.value"));
    Ended sheets = started(java, locale, kit, "sheets", ".");
    assertEquals(0, sheets.status(), sheets.err());
    List<String> files = sheets.out().lines().toList();
    assertFalse(files.isEmpty());
    files.forEach(file -> assertTrue(start(kit.resolve(file)).startsWith("%PDF-"), file));
    Ended csv = started(java, locale, kit, "sort", ".", "--csv");
    assertTrue(csv.out().contains("4.7 kΩ") && csv.out().contains("10 µF"), csv.out());
  }

  @Test
  void a_folder_whose_letters_the_locale_lacks_is_told_with_its_remedy() throws IOException {
    assumeTrue(namesAnything() && System.getProperty("os.name").equals("Linux"));
    Path kit = Files.createDirectory(here.resolve("Kübel µΩ"));
    for (Ended ended :
        List.of(
            started(List.of(), "C", kit, "check", "."),
            started(List.of(), "C", here, "check", "Kübel µΩ"))) {
      assertTrue(ended.status() == 2 || ended.status() == 3, ended.err());
      assertTrue(ended.err().contains("start it with LC_ALL=C.UTF-8"), ended.err());
      assertFalse(ended.err().contains("Exception"), ended.err());
    }
  }

  private Ended lowfirst(String... arguments) {
    // Each process lives for a second or two: the quick compiler alone is enough.
    return started(List.of("-XX:TieredStopAtLevel=1"), "", here, arguments);
  }

  private Ended started(List<String> options, String locale, Path where, String... arguments) {
    var words = new ArrayList<String>();
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    words.addAll(options);
    words.addAll(List.of("-jar", JAR.toString()));
    words.addAll(List.of(arguments));
    try {
      Path out = Files.createTempFile(here, "out", "");
      Path err = Files.createTempFile(here, "err", "");
      var builder = new ProcessBuilder(words).directory(where.toFile());
      if (!locale.isEmpty()) {
        builder.environment().put("LC_ALL", locale);
      }
      builder.environment().remove("LOWFIRST_STORE");
      builder.environment().remove("JAVA_TOOL_OPTIONS");
      Process process = builder.redirectOutput(out.toFile()).redirectError(err.toFile()).start();
      process.getOutputStream().close();
      if (!process.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS)) {
        process.destroyForcibly();
        throw new AssertionError(String.join(" ", words) + " did not end");
      }
      return new Ended(process.exitValue(), text(out), text(err));
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new AssertionError(interrupted);
    }
  }

  private static String text(Path file) throws IOException {
    String text = Files.readString(file, StandardCharsets.UTF_8);
    Files.delete(file);
    return text;
  }

  private static String start(Path file) {
    try {
      byte[] bytes = Files.readAllBytes(file);
      assertTrue(bytes.length > 0, file + " is empty");
      return new String(bytes, 0, Math.min(8, bytes.length), StandardCharsets.ISO_8859_1);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  private static String line(String text, String start) {
    return text.lines()
        .filter(line -> line.startsWith(start + " "))
        .findFirst()
        .orElseThrow(() -> new AssertionError(start + " in " + text));
  }

  /** Rows below the header; no cell of the sample kit runs over a line. */
  private static int rows(String table) throws IOException {
    return Files.readAllLines(Path.of(KIT, table)).size() - 1;
  }
}
