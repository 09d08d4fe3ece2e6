package lowfirst.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lowfirst.assembly.AssemblyOptions;
import lowfirst.assembly.AssemblyOrder;
import lowfirst.board.Kit;
import lowfirst.intake.KitFiles;
import lowfirst.intake.KitReader;
import lowfirst.store.EventStore;
import lowfirst.store.StoreLocation;

/** Kits to put on the bench in tests, and benches that serve them. */
public final class BenchKit {
  /** Two boards of one design; some texts try to be more than text. */
  public static final Kit SMALL =
      kit(
          Map.of(
              "kit.properties", "title=Lamps <b>bold</b>\n",
              "boards.csv", "board,count\ndriver,2\n",
              "bag.csv", "part type or marking,quantity,bag\n4k7,5,A1\n",
              "driver/bom.csv",
                  "designators,quantity,value,package,height\n"
                      + "\"R1,R2\",2,4k7,R_Axial_DIN0207,2.5 mm\n"
                      + "D1,1,1N4148,D_DO-35,2.0 mm\n"
                      + "K1,1,<img src=x onerror=alert(1)>,\"\"\" onclick=alert(2) \",9 mm\n",
              "driver/placements.csv",
                  "designator,x mm,y mm,rotation,side\n"
                      + "R1,10,10,0,top\nR2,10,20,0,top\nD1,10,30,0,top\nK1,30,30,0,top\n"));

  private BenchKit() {}

  /** The sample kit that the repository ships. */
  static Kit sample() {
    Path root = Path.of("sample-boms", "bell-player");
    var contents = new HashMap<String, byte[]>();
    try (Stream<Path> files = Files.walk(root)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        contents.put(root.relativize(file).toString(), Files.readAllBytes(file));
      }
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
    return KitReader.read(new KitFiles("bell-player", contents, List.of(), Optional.empty())).kit();
  }

  private static Kit kit(Map<String, String> tables) {
    var contents = new HashMap<String, byte[]>();
    tables.forEach((name, text) -> contents.put(name, text.getBytes(StandardCharsets.UTF_8)));
    return KitReader.read(new KitFiles("lamps", contents, List.of(), Optional.empty())).kit();
  }

  /** Serves a kit on a port of this computer; 0 takes a free one. */
  static BenchServer serve(Kit kit, Path store, int port) throws IOException {
    return BenchServer.start(
        kit,
        AssemblyOrder.of(kit, AssemblyOptions.USUAL),
        EventStore.open(StoreLocation.of(store), "kit"),
        Clock.systemUTC(),
        BenchServer.Reach.THIS_COMPUTER,
        port,
        new BenchServer.Terminal(
            code -> {},
            bug -> {
              throw new AssertionError(bug);
            }));
  }
}
