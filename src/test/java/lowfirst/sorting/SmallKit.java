package lowfirst.sorting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import lowfirst.board.BagLine;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Fingerprint;
import lowfirst.board.Item;
import lowfirst.board.Item.Fitting;
import lowfirst.board.Kit;
import lowfirst.board.OutputChannel;
import lowfirst.board.OutputChannel.PullDownSide;
import lowfirst.board.OutputChannel.TraceLayer;
import lowfirst.board.Settings;
import lowfirst.marking.WrittenValue;
import lowfirst.part.Datasheets;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.problem.Place;
import lowfirst.quantity.Dimension;

/** Kits of a few items, written in a line each. */
final class SmallKit {
  private final List<Item> items = new ArrayList<>();
  private final List<BagLine> bag = new ArrayList<>();
  private final List<OutputChannel> channels = new ArrayList<>();
  private int count = 1;

  static PartType resistor(String text) {
    return valued(PartKind.RESISTOR, Dimension.RESISTANCE, text);
  }

  static PartType ceramic(String text) {
    return valued(PartKind.CERAMIC_CAPACITOR, Dimension.CAPACITANCE, text);
  }

  static PartType valued(PartKind kind, Dimension dimension, String text) {
    WrittenValue written = WrittenValue.parse(text, Optional.of(dimension)).orThrow();
    return new PartType(
        kind,
        text,
        Optional.of(written.value()),
        written.tolerance(),
        written.voltage(),
        written.power(),
        "",
        "");
  }

  static PartType numbered(PartKind kind, String typeNumber) {
    return PartType.named(kind, typeNumber, typeNumber, "");
  }

  SmallKit described(PartType type, String description, String... designators) {
    items.add(
        new Item(
            Arrays.stream(designators).map(Designator::of).toList(),
            designators.length,
            type,
            description,
            OptionalDouble.empty(),
            Fitting.FITTED,
            Place.ofFile("bom.csv")));
    return this;
  }

  SmallKit item(PartType type, String... designators) {
    return described(type, "", designators);
  }

  /** Parts that have no place on the board. */
  SmallKit loose(PartType type, int quantity) {
    items.add(
        new Item(
            List.of(),
            quantity,
            type,
            "",
            OptionalDouble.empty(),
            Fitting.FITTED,
            Place.ofFile("bom.csv")));
    return this;
  }

  SmallKit bag(String text, int quantity, String label) {
    bag.add(new BagLine(text, quantity, label, Place.ofLine("bag.csv", bag.size() + 2)));
    return this;
  }

  SmallKit units(int units) {
    count = units;
    return this;
  }

  /** An output channel without flyback diode and fuse. */
  SmallKit channel(String mosfet, String gate, String pullDown) {
    return channel(mosfet, gate, pullDown, Optional.empty(), Optional.empty());
  }

  SmallKit channel(
      String mosfet,
      String gate,
      String pullDown,
      Optional<Designator> flyback,
      Optional<Designator> fuse) {
    channels.add(
        new OutputChannel(
            "out",
            "board",
            Optional.of(Designator.of(mosfet)),
            Optional.of(Designator.of(gate)),
            Optional.of(Designator.of(pullDown)),
            PullDownSide.GATE,
            flyback,
            fuse,
            Optional.empty(),
            "",
            "",
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            TraceLayer.UNSTATED,
            Optional.empty(),
            "",
            Optional.empty(),
            OptionalInt.empty(),
            "",
            Optional.empty(),
            Place.ofFile("channels.csv")));
    return this;
  }

  Kit kit() {
    var board =
        new Board("board", count, Optional.empty(), items, List.of(), part -> Optional.empty());
    var settings = new Settings("small kit", Optional.empty(), "0.5 % + 2 of 6000", "", "");
    return new Kit(
        settings,
        List.of(board),
        Datasheets.none(),
        List.of(),
        List.of(),
        channels,
        List.of(),
        List.of(),
        bag,
        List.of(),
        List.of(),
        Fingerprint.of(""));
  }
}
