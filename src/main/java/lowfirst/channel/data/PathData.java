package lowfirst.channel.data;

import java.util.List;
import java.util.Optional;
import lowfirst.board.OutputChannel;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.quantity.Source;
import lowfirst.quantity.Sourced;

/** What a channel's checks need to know of its current's path: track, contact and wire. */
public final class PathData {
  private static final double TRACE_LENGTH_MILLIMETRES = 100;
  private static final double COPPER_MILLIMETRES = 0.035;

  private PathData() {}

  /** The numbers of a channel's path. */
  public static List<Datum> of(OutputChannel channel) {
    return List.of(
        cell(Term.TRACE_WIDTH, channel.traceWidth(), channel, "trace width"),
        Datum.statedOr(
            Term.TRACE_LENGTH,
            channel.traceLength(),
            TRACE_LENGTH_MILLIMETRES,
            Source.assumed("100 mm", "channels.csv trace length")),
        Datum.statedOr(
            Term.TRACE_COPPER,
            channel.traceCopper(),
            COPPER_MILLIMETRES,
            Source.assumed("35 µm copper", "channels.csv trace copper")),
        cell(Term.CONTACT_RATING, channel.contactRating(), channel, "contact rating"),
        WireArea.of(
            Term.WIRE_AREA,
            channel.wire(),
            channel.place(),
            "wire",
            "wire of channel " + channel.name() + ", as 0.75 mm² or AWG 18: channels.csv"),
        cell(Term.WIRE_LENGTH, channel.wireLength(), channel, "wire length"),
        wiresTogether(channel));
  }

  private static Datum wiresTogether(OutputChannel channel) {
    return channel.wiresTogether().isPresent()
        ? Datum.of(
            Term.WIRES_TOGETHER,
            channel.wiresTogether().getAsInt(),
            Source.kit(channel.place() + ", wires together"))
        : Datum.of(
            Term.WIRES_TOGETHER,
            1,
            Source.assumed("not bundled with others", "channels.csv wires together"));
  }

  private static Datum cell(
      Term term, Optional<Sourced> value, OutputChannel channel, String column) {
    return Datum.stated(
        term, value, column + " of channel " + channel.name() + ": write it in channels.csv");
  }
}
