package lowfirst.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.board.OutputChannel;
import lowfirst.board.OutputChannel.PullDownSide;
import lowfirst.board.OutputChannel.TraceLayer;
import lowfirst.intake.cell.Cells;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.TableRow;
import lowfirst.intake.table.Table;
import lowfirst.problem.Problem;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Sourced;

/** Reads the rows of {@code channels.csv}. */
final class ChannelTable {
  /** Boards for very large currents have 0.4 mm of it: common practice. */
  private static final Quantity THICKEST_COPPER = Quantity.of("1", Dimension.LENGTH);

  /** The contact of one part to it has that much alone: common practice. */
  private static final Quantity BEST_HEATSINK = Quantity.of("0.1", Dimension.THERMAL_RESISTANCE);

  /** A slip in the unit makes 100 mil 100 mm: no track of a board for loads is wider than half. */
  private static final Quantity WIDEST_TRACK = Quantity.of("50", Dimension.LENGTH);

  /** 5 K/W HS1: a thermal resistance, and what the heatsink is called. */
  private static final Pattern NAMED_HEATSINK =
      Pattern.compile(
          "(\\S*\\d\\S*?(?:\\s*(?:m?K|°?C)/W)?)(?:\\s*[,;])?\\s+(?!(?:m?K|°?C)/W)(\\S.*)");

  /** How people say that wires run from part to part. */
  private static final Set<String> WIRED =
      Set.of("none", "no track", "no trace", "wire", "wired", "point to point", "point-to-point");

  private ChannelTable() {}

  /** What its rows refer to in other tables. */
  record Names(ListedNames boards, ListedNames drivers, ListedNames loads) {}

  /** The output channels; a row that names no board is of the only one. */
  static List<OutputChannel> channels(Table table, Names names, List<Problem> problems) {
    var channels = new ArrayList<OutputChannel>();
    for (TableRow row : table.rows()) {
      var cells = new Cells(row, problems);
      cells
          .needed(Column.CHANNEL)
          .ifPresent(name -> channels.add(channel(name, names, row, cells)));
    }
    return channels;
  }

  private static OutputChannel channel(String name, Names names, TableRow row, Cells cells) {
    String board = cells.text(Column.BOARD);
    String heatsink = cells.text(Column.HEATSINK);
    Matcher named = NAMED_HEATSINK.matcher(heatsink);
    boolean isNamed = named.matches();
    Optional<Sourced> traceWidth =
        isWired(cells.text(Column.TRACE_WIDTH))
            ? Optional.empty()
            : cells.atMost(
                Column.TRACE_WIDTH,
                cells.inUnits(Column.TRACE_WIDTH, Dimension.LENGTH, "mm", "mil"),
                WIDEST_TRACK);
    return new OutputChannel(
        name,
        board.isEmpty() ? names.boards.only() : names.boards.meantBy(board),
        cells.designator(Column.MOSFET),
        cells.designator(Column.GATE_RESISTOR),
        cells.designator(Column.PULL_DOWN),
        pullDownSide(cells),
        cells.designator(Column.FLYBACK_DIODE),
        cells.designator(Column.FUSE),
        cells.atLeast(Column.HEATSINK, isNamed ? named.group(1) : heatsink, BEST_HEATSINK),
        isNamed ? named.group(2) : "",
        names.drivers.meantBy(cells.text(Column.DRIVER)),
        traceWidth,
        cells.notBelowZero(Column.TRACE_LENGTH, Dimension.LENGTH),
        cells.atMost(Column.TRACE_COPPER, THICKEST_COPPER),
        traceLayer(cells, traceWidth),
        cells.aboveZero(Column.CONTACT_RATING, Dimension.CURRENT),
        cells.text(Column.WIRE),
        cells.inUnits(Column.WIRE_LENGTH, Dimension.LENGTH, "m", "mm"),
        cells.count(Column.WIRES_TOGETHER),
        names.loads.meantBy(cells.text(Column.LOAD)),
        cells.amount(Column.AMBIENT, Dimension.TEMPERATURE),
        row.place());
  }

  private static PullDownSide pullDownSide(Cells cells) {
    return switch (cells.text(Column.PULL_DOWN_SIDE).toLowerCase(Locale.ROOT)) {
      case "", "-", "?", "unknown" -> PullDownSide.UNSTATED;
      case "gate", "g", "at the gate" -> PullDownSide.GATE;
      case "driver", "pin", "driver pin", "at the driver" -> PullDownSide.DRIVER;
      default -> {
        cells.notOneOf(Column.PULL_DOWN_SIDE, "gate, driver");
        yield PullDownSide.UNSTATED;
      }
    };
  }

  /** Whether a cell says that there is no track; a dash leaves that open. */
  private static boolean isWired(String text) {
    return WIRED.contains(text.toLowerCase(Locale.ROOT));
  }

  /** Where a width is stated there is a track, whatever the layer's cell says. */
  private static TraceLayer traceLayer(Cells cells, Optional<Sourced> width) {
    String text = cells.text(Column.TRACE_LAYER);
    if (isWired(text) || isWired(cells.text(Column.TRACE_WIDTH))) {
      return width.isPresent() ? TraceLayer.UNSTATED : TraceLayer.NONE;
    }
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "", "-", "?", "unknown" -> TraceLayer.UNSTATED;
      case "external", "outer", "outside", "top", "bottom" -> TraceLayer.EXTERNAL;
      case "internal", "inner", "inside" -> TraceLayer.INTERNAL;
      default -> {
        cells.notOneOf(Column.TRACE_LAYER, "external, internal, none");
        yield TraceLayer.UNSTATED;
      }
    };
  }
}
