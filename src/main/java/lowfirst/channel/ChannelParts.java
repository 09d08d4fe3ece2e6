package lowfirst.channel;

import java.util.Optional;
import lowfirst.board.Designator;
import lowfirst.board.Driver;
import lowfirst.board.Item;
import lowfirst.board.Kit;
import lowfirst.board.OutputChannel;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;

/**
 * The parts of a kit's channels: what the BOM says stands in each role, with its datasheet.
 *
 * @param kit whose boards and datasheets
 */
record ChannelParts(Kit kit) {
  /** The part in a role; empty where none is fitted. */
  Optional<PartData> in(Role role, OutputChannel channel) {
    Optional<Designator> designator = role.placeIn(channel);
    if (designator.isEmpty()) {
      return Optional.empty();
    }
    Optional<Item> item =
        kit.board(channel.board()).flatMap(board -> board.itemOf(designator.get()));
    if (item.isEmpty()) {
      PartKind kind = role == Role.MOSFET ? PartKind.MOSFET : PartKind.UNKNOWN;
      String name = designator.get() + " (not in the BOM of board " + channel.board() + ")";
      return Optional.of(partData(role, named(kind, name), ""));
    }
    if (isListedTwice(channel, designator.get())) {
      String name = designator.get().text();
      return Optional.of(
          partData(role, named(item.get().partType().kind(), name), "")
              .absent(
                  "which of several part types is at "
                      + name
                      + " of board "
                      + channel.board()
                      + ": list it once in the BOM"));
    }
    PartType type = item.get().partType();
    String words =
        String.join(
            " ", type.text(), type.typeNumber(), type.packageName(), item.get().description());
    PartData part = partData(role, type, words);
    String where = designator.get() + " is %s in the BOM of board " + channel.board() + ": ";
    return Optional.of(
        switch (item.get().fitting()) {
          case FITTED -> part;
          case NOT_FITTED ->
              part.absent(
                  String.format(where, "not fitted")
                      + "fit it there, or take it out of channels.csv");
          case OPTIONAL ->
              part.absent(String.format(where, "optional") + "write there whether it is fitted");
        });
  }

  /** Whether the BOM fits several part types at one place. */
  private boolean isListedTwice(OutputChannel channel, Designator place) {
    return kit.board(channel.board()).stream()
            .flatMap(board -> board.items().stream())
            .filter(item -> item.isFitted() && item.designators().contains(place))
            .map(Item::partType)
            .distinct()
            .limit(2)
            .count()
        > 1;
  }

  /** The part that a driver is. */
  PartData stage(Driver driver) {
    PartType type = named(DriverStage.of(driver).partKind(), driver.partType());
    return partData(Role.STAGE, type, driver.partType());
  }

  private PartData partData(Role role, PartType type, String words) {
    String key = type.typeNumber().isBlank() ? type.text() : type.typeNumber();
    return PartData.of(role, type, kit.datasheets().about(key), words);
  }

  private static PartType named(PartKind kind, String typeNumber) {
    return PartType.named(kind, typeNumber, typeNumber, "");
  }
}
