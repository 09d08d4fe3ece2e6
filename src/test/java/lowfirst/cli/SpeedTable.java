package lowfirst.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lowfirst.cli.file.KitFolder;
import lowfirst.cli.process.Surroundings;
import lowfirst.intake.KitReader;
import lowfirst.intake.KitReading;
import lowfirst.sheet.pdf.SheetsBenchmark;
import org.apache.commons.csv.CSVParser;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Our time as a multiple of what cannot be spared: a bare virtual machine, the command line library
 * with the same verbs, merely reading the tables, bare PDFBox writing the same ink. All in one run,
 * ours and the floors in turn, medians of several rounds. A table for the README; nothing is
 * asserted of time, since a slow day is no fault.
 */
@Tag("benchmark")
class SpeedTable {
  private static final int FEW = 1_000;
  private static final int SOME = 10_000;
  private static final int MANY = 100_000;

  /** Heaps to try, MiB, until one is enough. */
  private static final List<Integer> HEAPS = List.of(48, 64, 80, 98, 112, 128, 160, 192, 256, 384);

  /** What README starts the jar with: one compiler and one collector do for some seconds. */
  private static final List<String> SPARING =
      List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC");

  /** Measured as well where it was built before. */
  private static final Path IMAGE = Path.of("target", "image", "lowfirst", "bin", "lowfirst");

  @TempDir private Path folder;

  private final List<String> table = new ArrayList<>();

  /** Something whose seconds can be taken. */
  private interface Work {
    double seconds() throws IOException;
  }

  @Test
  void prints_the_ratios_to_floors_built_beside() throws IOException {
    table.add("| what | ours | floor | ratio | goal |");
    table.add("|---|---|---|---|---|");
    starts();
    Map<Integer, Map<String, Double>> warm = new LinkedHashMap<>();
    for (int placements : List.of(FEW, SOME, MANY)) {
      Path kit = LargeKit.written(folder.resolve("kit-" + placements), placements);
      processes(kit, placements);
      warm.put(placements, warm(kit, placements));
    }
    growth(warm.get(FEW), warm.get(MANY));
    memory(folder.resolve("kit-" + MANY));
    double[] sheets = SheetsBenchmark.secondsOfOursAndBare();
    row("sheets of 1000 placements, against bare PDFBox", sheets[0], sheets[1], "1.5");
    System.out.println(
        (Started.countsProcessorTime()
                ? "Seconds of processor time (user and system)"
                : "Seconds on the clock")
            + ", medians; Java "
            + Runtime.version()
            + ", "
            + Runtime.getRuntime().availableProcessors()
            + " processors");
    table.forEach(System.out::println);
    assertTrue(table.size() > 12, "rows are missing");
  }

  /** What a start costs: of nothing, of the library alone, of ours. */
  private void starts() throws IOException {
    Path tree = CommandTreeFloor.jar(Files.createDirectories(folder.resolve("tree")));
    Path bare = FloorJar.of(folder.resolve("bare.jar"), BareJvm.class, List.of());
    var works = new LinkedHashMap<String, Work>();
    works.put("bare", java(bare));
    works.put("tree", java(tree, "code", "brown", "black", "orange", "gold"));
    works.put("bands", ours("code", "brown", "black", "orange", "gold"));
    works.put("print", ours("code", "4n7J"));
    works.put("value", ours("code", "4.7k", "--tolerance", "1%"));
    if (Files.isExecutable(IMAGE)) {
      List<String> words = List.of("code", "brown", "black", "orange", "gold");
      works.put("image", () -> Started.seconds(IMAGE, words));
    }
    Map<String, Double> medians = medians(works, 11, 1);
    double floor = medians.get("tree");
    row(
        "start: the verbs with empty bodies, against a bare machine",
        floor,
        medians.get("bare"),
        "");
    row(
        "`code` of four bands, against the verbs with empty bodies",
        medians.get("bands"),
        floor,
        "1.25");
    row("`code` of a print", medians.get("print"), floor, "1.25");
    row("`code` of a value", medians.get("value"), floor, "1.25");
    if (medians.containsKey("image")) {
      row(
          "`code` from the jar, against the image",
          medians.get("bands"),
          medians.get("image"),
          "2");
    }
  }

  /**
   * The reader of CSV with what it uses of other libraries, by name: they are no libraries of ours.
   */
  private static List<Class<?>> reader() {
    try {
      return List.of(
          CSVParser.class,
          Class.forName("org.apache.commons.io.IOUtils"),
          Class.forName("org.apache.commons.codec.binary.Base64"));
    } catch (ClassNotFoundException changed) {
      throw new IllegalStateException(changed);
    }
  }

  private void processes(Path kit, int placements) throws IOException {
    Path reading = FloorJar.of(folder.resolve("reading.jar"), ReadingFloor.class, reader());
    var works = new LinkedHashMap<String, Work>();
    works.put("floor", java(reading, files(kit)));
    for (String verb : List.of("check", "steps")) {
      works.put(verb, ours(verb, kit.toString()));
      works.put("sparing " + verb, java(SPARING, Path.of(jar()), verb, kit.toString()));
    }
    if (Files.isExecutable(IMAGE)) {
      for (String verb : List.of("check", "steps")) {
        works.put("image " + verb, () -> Started.seconds(IMAGE, List.of(verb, kit.toString())));
      }
    }
    Map<String, Double> medians = medians(works, placements == MANY ? 3 : 5, 1);
    for (String verb : List.of("check", "steps")) {
      if (medians.containsKey("image " + verb)) {
        row(
            "`" + verb + "` of " + placements + " placements from the image, whole process",
            medians.get("image " + verb),
            medians.get("floor"),
            placements == MANY ? "3" : "");
      }
      row(
          "`" + verb + "` of " + placements + " placements from the jar with " + SPARING,
          medians.get("sparing " + verb),
          medians.get("floor"),
          placements == MANY ? "3" : "");
      row(
          "`" + verb + "` of " + placements + " placements, whole process, against merely reading",
          medians.get(verb),
          medians.get("floor"),
          placements == MANY ? "3" : "");
    }
  }

  /** In one machine that has warmed up: the thread's time. */
  private Map<String, Double> warm(Path kit, int placements) throws IOException {
    var works = new LinkedHashMap<String, Work>();
    works.put("floor", () -> thread(() -> ReadingFloor.characters(files(kit))));
    works.put("check", () -> thread(() -> run("check", kit)));
    works.put("steps", () -> thread(() -> run("steps", kit)));
    int rounds = placements == MANY ? 12 : 400_000 / placements / 10 + 4;
    Map<String, Double> medians = medians(works, rounds, rounds);
    for (String verb : List.of("check", "steps")) {
      row(
          "`" + verb + "` of " + placements + " placements, warm, against merely reading",
          medians.get(verb),
          medians.get("floor"),
          placements == MANY ? "3" : "");
    }
    return medians;
  }

  private void growth(Map<String, Double> few, Map<String, Double> many) {
    double bound = MANY * Math.log(MANY) / (FEW * Math.log(FEW));
    for (String verb : List.of("check", "steps")) {
      table.add(
          String.format(
              Locale.ROOT,
              "| `%s`: growth from %d to %d placements, against n·log n | %.0f | %.0f | %.2f | 1 |",
              verb,
              FEW,
              MANY,
              many.get(verb) / few.get(verb),
              bound,
              many.get(verb) / few.get(verb) / bound));
    }
  }

  private void memory(Path kit) throws IOException {
    long before = liveBytes();
    KitReading reading = KitReader.read(KitFolder.read(kit));
    long held = liveBytes() - before;
    assertTrue(reading.kit().boards().get(0).placements().size() == MANY);
    table.add(
        String.format(
            Locale.ROOT, "| a kit in memory, bytes a placement | %d | | | 1024 |", held / MANY));
    for (String verb : List.of("check", "steps")) {
      int enough = smallestHeap(verb, kit);
      table.add(
          String.format(
              Locale.ROOT,
              "| `%s` of %d placements: smallest heap it runs in, MiB | %d | | | 98 |",
              verb,
              MANY,
              enough));
    }
  }

  private static int smallestHeap(String verb, Path kit) throws IOException {
    for (int heap : HEAPS) {
      List<String> words =
          List.of("-XX:+UseSerialGC", "-Xmx" + heap + "m", "-jar", jar(), verb, kit.toString());
      if (Started.status(words) <= 1) {
        return heap;
      }
    }
    return Integer.MAX_VALUE;
  }

  private static long liveBytes() {
    for (int i = 0; i < 4; i++) {
      System.gc();
    }
    return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
  }

  private static String[] files(Path kit) {
    return new String[] {
      kit.resolve("bom.csv").toString(), kit.resolve("placements.csv").toString()
    };
  }

  private static String jar() {
    return System.getProperty("lowfirst.jar", "target/lowfirst.jar");
  }

  private static Work ours(String... arguments) {
    return java(Path.of(jar()), arguments);
  }

  private static Work java(Path jar, String... arguments) {
    return java(List.of(), jar, arguments);
  }

  private static Work java(List<String> options, Path jar, String... arguments) {
    var words = new ArrayList<>(options);
    words.addAll(List.of("-jar", jar.toString()));
    words.addAll(List.of(arguments));
    return () -> Started.seconds(words);
  }

  private static int run(String verb, Path kit) {
    var nowhere = new PrintStream(OutputStream.nullOutputStream());
    return Lowfirst.run(
        new String[] {verb, kit.toString()},
        new Surroundings(
            nowhere, nowhere, kit, Clock.systemUTC(), Map.of(), Surroundings.Terminal.FILE));
  }

  private interface Step {
    long run() throws IOException;
  }

  private static double thread(Step step) throws IOException {
    var threads = ManagementFactory.getThreadMXBean();
    long start = threads.getCurrentThreadCpuTime();
    step.run();
    return (threads.getCurrentThreadCpuTime() - start) / 1e9;
  }

  /** All of them in turn, so that a slow minute hits each; the first rounds don't count. */
  private static Map<String, Double> medians(Map<String, Work> works, int rounds, int first)
      throws IOException {
    var taken = new LinkedHashMap<String, List<Double>>();
    for (int round = -first; round < rounds; round++) {
      for (Map.Entry<String, Work> work : works.entrySet()) {
        double seconds = work.getValue().seconds();
        if (round >= 0) {
          taken.computeIfAbsent(work.getKey(), none -> new ArrayList<>()).add(seconds);
        }
      }
    }
    var medians = new LinkedHashMap<String, Double>();
    taken.forEach(
        (name, all) -> medians.put(name, all.stream().sorted().toList().get(all.size() / 2)));
    return medians;
  }

  private void row(String what, double ours, double floor, String goal) {
    table.add(
        String.format(
            Locale.ROOT,
            "| %s | %s | %s | %.2f | %s |",
            what,
            seconds(ours),
            seconds(floor),
            ours / floor,
            goal));
  }

  private static String seconds(double seconds) {
    return seconds < 0.1
        ? String.format(Locale.ROOT, "%.1f ms", 1000 * seconds)
        : String.format(Locale.ROOT, "%.2f s", seconds);
  }
}
