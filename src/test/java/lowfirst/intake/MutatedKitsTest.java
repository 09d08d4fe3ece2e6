package lowfirst.intake;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import lowfirst.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/**
 * Every reader, fed with a thousand damaged tables: whatever stands in a file, reading ends, says
 * what is wrong with places, and never throws. Seeded, so that a failure can be run again.
 */
class MutatedKitsTest {
  private static final long SEED = 20261125;
  private static final int RUNS = 1200;

  /** What damages tables most: separators, quotes, line ends, numbers too large, other scripts. */
  private static final List<String> TOKENS =
      List.of(
          "\"",
          "\"\"",
          ",",
          ";",
          "\t",
          "\n",
          "\r",
          "\r\n",
          " ",
          "  ",
          "#",
          "# ",
          "|",
          "=",
          "\u0000",
          "\ufeff",
          "\ufffd",
          "-",
          "--",
          "R1-R9999999",
          "R1-R4",
          "C27C28",
          "1e999999999",
          "1e-400",
          "99999999999999999999",
          "-0",
          "NaN",
          "Infinity",
          "4k7",
          "0,1µF",
          "12 cm",
          "µ",
          "Ω",
          "∞",
          "mil",
          "(mm)",
          "[inch]",
          "top",
          "bottom",
          "Total",
          "x",
          "y",
          "Ref",
          "Value",
          "::",
          "/",
          "../..",
          "C:\\",
          "(((((((((",
          "%s%n",
          "${a}",
          "\\u00zz",
          "𝟜𝟟",
          "٤٧",
          "🙂");

  private final Random random = new Random(SEED);

  @Test
  @Timeout(300)
  void no_damaged_kit_throws_or_hangs() throws Exception {
    List<Map<String, byte[]>> kits = kits();
    for (int run = 0; run < RUNS; run++) {
      Map<String, byte[]> kit = new TreeMap<>(kits.get(run % kits.size()));
      String file = new ArrayList<>(kit.keySet()).get(random.nextInt(kit.size()));
      byte[] damaged = kit.get(file);
      for (int change = random.nextInt(6); change >= 0; change--) {
        damaged = damaged(damaged);
      }
      kit.put(file, damaged);
      assertRead(run, file, kit);
    }
  }

  private static void assertRead(int run, String file, Map<String, byte[]> kit) {
    try {
      KitReading reading = KitReader.read(new KitFiles("damaged", kit, List.of()));
      for (Problem problem : reading.problems()) {
        assertFalse(problem.message().isBlank());
        assertTrue(problem.place().line() >= 0);
      }
    } catch (RuntimeException | StackOverflowError thrown) {
      String text = new String(kit.get(file), StandardCharsets.UTF_8);
      fail("run " + run + ", " + file + ":\n" + text, thrown);
    }
  }

  private byte[] damaged(byte[] bytes) {
    return switch (random.nextInt(7)) {
      case 0 -> withByte(bytes);
      case 1 -> without(bytes);
      case 2, 3 -> withToken(bytes);
      case 4 -> withRepeat(bytes);
      case 5 -> java.util.Arrays.copyOf(bytes, random.nextInt(bytes.length + 1));
      default -> withLinesSwapped(bytes);
    };
  }

  private byte[] withByte(byte[] bytes) {
    byte[] changed = bytes.clone();
    if (changed.length > 0) {
      changed[random.nextInt(changed.length)] = (byte) random.nextInt(256);
    }
    return changed;
  }

  private byte[] without(byte[] bytes) {
    int from = random.nextInt(bytes.length + 1);
    int to = Math.min(bytes.length, from + random.nextInt(20));
    return joined(bytes, from, new byte[0], to);
  }

  private byte[] withToken(byte[] bytes) {
    int at = random.nextInt(bytes.length + 1);
    String token = TOKENS.get(random.nextInt(TOKENS.size()));
    return joined(bytes, at, token.getBytes(StandardCharsets.UTF_8), at);
  }

  private byte[] withRepeat(byte[] bytes) {
    int from = random.nextInt(bytes.length + 1);
    int to = Math.min(bytes.length, from + random.nextInt(40));
    byte[] piece = java.util.Arrays.copyOfRange(bytes, from, to);
    return joined(bytes, to, piece, to);
  }

  private byte[] withLinesSwapped(byte[] bytes) {
    String[] lines = new String(bytes, StandardCharsets.UTF_8).split("\n", -1);
    int one = random.nextInt(lines.length);
    int other = random.nextInt(lines.length);
    String kept = lines[one];
    lines[one] = lines[other];
    lines[other] = kept;
    return String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
  }

  private static byte[] joined(byte[] bytes, int from, byte[] between, int to) {
    byte[] joined = new byte[from + between.length + bytes.length - to];
    System.arraycopy(bytes, 0, joined, 0, from);
    System.arraycopy(between, 0, joined, from, between.length);
    System.arraycopy(bytes, to, joined, from + between.length, bytes.length - to);
    return joined;
  }

  private static List<Map<String, byte[]>> kits() throws Exception {
    var kits = new ArrayList<Map<String, byte[]>>();
    Path root = Path.of(MutatedKitsTest.class.getResource("/dialects").toURI());
    try (Stream<Path> folders = Files.list(root)) {
      for (Path folder : folders.sorted().toList()) {
        kits.add(files(folder));
      }
    }
    kits.add(ownTables());
    return kits;
  }

  private static Map<String, byte[]> files(Path folder) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> paths = Files.list(folder)) {
      for (Path path : paths.toList()) {
        if (!path.getFileName().toString().matches("README.txt|expected.txt")) {
          files.put(path.getFileName().toString(), Files.readAllBytes(path));
        }
      }
    }
    return files;
  }

  /** A kit with one of each table that its author writes. */
  private static Map<String, byte[]> ownTables() {
    return KitTables.files(
            "kit.properties",
            "title = Chime\nambient = 50 C\n",
            "columns.properties",
            "bom.value = value\nplacements.unit = mm\n",
            "boards.csv",
            "board,count,bom,placements,width mm,height mm\nmain,2,main/bom.csv,main/placements.csv,80,60\n",
            "main/bom.csv",
            "designators,quantity,value,package,height\nQ1,1,BP-1,TO-220,\nR1,1,330R,DIN0207,2.5 mm\n",
            "main/placements.csv",
            "designator,x mm,y mm,rotation,side,value,package\nQ1,10,10,45,top,BP-1,TO-220\nR1,30,10,0,top,330R,DIN0207\n",
            "datasheets.csv",
            "part type,symbol,condition,min,typ,max,unit,source\nBP-1,RDSon,VGS=5V,,30,40,mΩ,sheet 1\n",
            "rails.csv",
            "rail,voltage,tolerance,current limit\nbells,24 V,5 %,20 A\n",
            "channels.csv",
            "channel,board,MOSFET,gate resistor,driver,trace width,wire,load\n1,main,Q1,R1,pin,2 mm,1 mm2,bell\n",
            "drivers.csv",
            "driver,kind,high level min\npin,logic pin,4.5 V\n",
            "loads.csv",
            "load,kind,rail,resistance,on time\nbell,solenoid,bells,12 Ω,40 ms\n",
            "bag.csv",
            "part type,quantity,bag\n330R,10,A1\n",
            "swaps.csv",
            "board,designators,part type fitted,reason\nmain,Q1,BP-2,sold out\n")
        .contents();
  }
}
