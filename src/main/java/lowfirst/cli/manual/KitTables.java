package lowfirst.cli.manual;

import java.util.List;

/** The files of a kit as its manual page lists them. */
final class KitTables {
  /**
   * A file of a kit.
   *
   * @param name below the kit's folder
   * @param content what a row of it is
   */
  record KitTable(String name, String content) {}

  static final List<KitTable> ALL =
      List.of(
          new KitTable("bom.csv", "a row a part type, with the designators where it goes"),
          new KitTable("placements.csv", "a row a part's place on the board"),
          new KitTable(
              "boards.csv", "a row a board design; each has a folder with its two lists then"),
          new KitTable(
              "kit.properties", "title, ambient, meter, meter capacitance and signer, a line each"),
          new KitTable(
              "datasheets.csv",
              "a row a line of a datasheet table; lowfirst loads --symbols lists the symbols"),
          new KitTable("rails.csv", "a row a supply"),
          new KitTable("drivers.csv", "a row a kind of output that drives gates"),
          new KitTable("channels.csv", "a row an output, from driver to load"),
          new KitTable("loads.csv", "a row a load"),
          new KitTable("bag.csv", "a row a part type that came"),
          new KitTable("swaps.csv", "a row a substitute that was accepted"));

  private KitTables() {}
}
