package lowfirst.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * A kit of one board with many parts, as an export writes it: 20 designators a BOM line, the
 * placements in no order, one part on 144 mm².
 */
final class LargeKit {
  private static final int A_LINE = 20;
  private static final double PITCH = 12;

  private record Sort(String letter, List<String> values, String footprint) {}

  private static final List<Sort> SORTS =
      List.of(
          new Sort(
              "R",
              List.of("100R", "1k", "4k7", "10k", "47k", "100k", "220R", "330R"),
              "Resistor_THT:R_Axial_DIN0207_L6.3mm_D2.5mm_P10.16mm_Horizontal"),
          new Sort(
              "C",
              List.of("100n", "10n", "22p", "1u", "470n"),
              "Capacitor_THT:C_Disc_D5.0mm_W2.5mm_P5.00mm"),
          new Sort("D", List.of("1N4148", "1N5819"), "Diode_THT:D_DO-35_SOD27_P7.62mm_Horizontal"),
          new Sort("Q", List.of("BP-N60L", "BC547"), "Package_TO_SOT_THT:TO-92_Inline"),
          new Sort("U", List.of("ULN2803", "LM358"), "Package_DIP:DIP-8_W7.62mm"));

  private LargeKit() {}

  /** Writes {@code bom.csv} and {@code placements.csv} into a new folder. */
  static Path written(Path folder, int placements) throws IOException {
    var random = new Random(placements);
    var counts = new HashMap<String, Integer>();
    var bom = new ArrayList<String>();
    var places = new ArrayList<String>();
    int inARow = (int) Math.ceil(Math.sqrt(placements));
    while (places.size() < placements) {
      Sort sort = SORTS.get(random.nextInt(SORTS.size()));
      String value = sort.values().get(random.nextInt(sort.values().size()));
      var names = new ArrayList<String>();
      while (names.size() < A_LINE && places.size() < placements) {
        String name = sort.letter() + counts.merge(sort.letter(), 1, Integer::sum);
        names.add(name);
        places.add(
            String.format(
                Locale.ROOT,
                "%s,%s,%s,%.4f,%.4f,%d.000000,top",
                name,
                value,
                sort.footprint(),
                PITCH * (places.size() % inARow) + 6 + random.nextDouble(),
                PITCH * Math.floorDiv(places.size(), inARow) + 6 + random.nextDouble(),
                90 * random.nextInt(4)));
      }
      bom.add(
          String.format(
              "\"%s\",%d,%s,%s", String.join(",", names), names.size(), value, sort.footprint()));
    }
    Collections.shuffle(places, random);
    places.add(0, "Ref,Val,Package,PosX,PosY,Rot,Side");
    bom.add(0, "Designators,Quantity,Value,Footprint");
    Files.createDirectories(folder);
    Files.write(folder.resolve("placements.csv"), places);
    Files.write(folder.resolve("bom.csv"), bom);
    return folder;
  }
}
