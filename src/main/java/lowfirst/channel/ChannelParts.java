package lowfirst.channel;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lowfirst.board.Designator;
import lowfirst.board.Driver;
import lowfirst.board.Item;
import lowfirst.board.Kit;
import lowfirst.board.OutputChannel;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Role;
import lowfirst.channel.data.FuseReader;
import lowfirst.channel.data.PartData;
import lowfirst.channel.data.Ratings;
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
    Designator place = designator.get();
    List<Item> listed = items(channel).filter(item -> item.designators().contains(place)).toList();
    List<Item> parts =
        listed.stream().filter(item -> item.partType().kind() != PartKind.FUSE_HOLDER).toList();
    String onBoard = " of board " + channel.board();
    if (listed.isEmpty()) {
      PartKind kind = role == Role.MOSFET ? PartKind.MOSFET : PartKind.UNKNOWN;
      String name = place + " (not in the BOM" + onBoard + ")";
      return Optional.of(partData(role, named(kind, name), ""));
    }
    if (parts.isEmpty()) {
      return Optional.of(
          partData(role, named(PartKind.FUSE, place.text()), "")
              .absent("the fuse in the holder " + place + onBoard + ": list it, too, in the BOM"));
    }
    long types =
        parts.stream().filter(Item::isFitted).map(Item::partType).distinct().limit(2).count();
    if (types > 1) {
      return Optional.of(
          partData(role, named(parts.get(0).partType().kind(), place.text()), "")
              .absent(
                  "which of several part types is at "
                      + place
                      + onBoard
                      + ": list it once in the BOM"));
    }
    Item item = parts.stream().filter(Item::isFitted).findFirst().orElse(parts.get(0));
    PartData part = partData(role, item.partType(), words(item));
    String where = place + " is %s in the BOM of board " + channel.board() + ": ";
    return Optional.of(
        switch (item.fitting()) {
          case FITTED -> part;
          case NOT_FITTED ->
              part.absent(
                  String.format(where, "not fitted")
                      + "fit it there, or take it out of channels.csv");
          case OPTIONAL ->
              part.absent(String.format(where, "optional") + "write there whether it is fitted");
        });
  }

  private Stream<Item> items(OutputChannel channel) {
    return kit.board(channel.board()).stream().flatMap(board -> board.items().stream());
  }

  private static String words(Item item) {
    PartType type = item.partType();
    return String.join(" ", type.text(), type.typeNumber(), type.packageName(), item.description());
  }

  /**
   * What the holder of the channel's fuse bears: that with its number, such as XF1 of F1, or else
   * any of the board; empty where the BOM lists none.
   */
  Optional<Datum> holderOfFuse(OutputChannel channel) {
    List<Item> holders =
        items(channel)
            .filter(item -> item.isFitted() && item.partType().kind() == PartKind.FUSE_HOLDER)
            .toList();
    String number = number(channel.fuse().orElseThrow());
    List<Item> own =
        holders.stream()
            .filter(
                item ->
                    item.designators().stream().map(ChannelParts::number).anyMatch(number::equals))
            .toList();
    List<Datum> ratings = (own.isEmpty() ? holders : own).stream().map(this::holderRating).toList();
    return ratings.stream()
        .filter(rating -> !rating.isKnown())
        .findFirst()
        .or(() -> ratings.stream().reduce(Datum::joined));
  }

  private static String number(Designator place) {
    return place.text().replaceAll("\\D", "");
  }

  private Datum holderRating(Item holder) {
    String name = holder.partType().name();
    Ratings ratings = Ratings.of(name, kit.datasheets().about(name), words(holder));
    return FuseReader.holder(name, holder.partType(), ratings, words(holder));
  }

  /** The part that a driver is. */
  PartData stage(Driver driver) {
    PartType type = named(DriverStage.of(driver).partKind(), driver.partType());
    return partData(Role.STAGE, type, driver.partType());
  }

  private PartData partData(Role role, PartType type, String words) {
    return PartData.of(role, type, kit.datasheets().about(type.name()), words);
  }

  private static PartType named(PartKind kind, String typeNumber) {
    return PartType.named(kind, typeNumber, typeNumber, "");
  }
}
