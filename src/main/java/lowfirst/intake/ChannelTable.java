package lowfirst.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.board.Bounds;
import lowfirst.board.OutputChannel;
import lowfirst.board.OutputChannel.PullDownSide;
import lowfirst.board.OutputChannel.TraceLayer;
import lowfirst.intake.cell.Cells;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.TableRow;
import lowfirst.intake.table.Table;
import lowfirst.problem.Problem;
import lowfirst.quantity.Sourced;

/** Reads the rows of {@code channels.csv}. */
final class ChannelTable {
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
            : cells.inUnits(Column.TRACE_WIDTH, Bounds.TRACE_WIDTH, "mm", "mil");
    return new OutputChannel(
        name,
        board.isEmpty() ? names.boards.only() : names.boards.meantBy(board),
        cells.designator(Column.MOSFET),
        cells.designator(Column.GATE_RESISTOR),
        cells.designator(Column.PULL_DOWN),
        pullDownSide(cells),
        cells.designator(Column.FLYBACK_DIODE),
        cells.designator(Column.FUSE),
        cells.amount(Column.HEATSINK, isNamed ? named.group(1) : heatsink, Bounds.HEATSINK),
        isNamed ? named.group(2) : "",
        names.drivers.meantBy(cells.text(Column.DRIVER)),
        traceWidth,
        cells.amount(Column.TRACE_LENGTH, Bounds.TRACE_LENGTH),
        cells.amount(Column.TRACE_COPPER, Bounds.TRACE_COPPER),
        traceLayer(cells, traceWidth),
        cells.amount(Column.CONTACT_RATING, Bounds.CONTACT_RATING),
        cells.text(Column.WIRE),
        cells.inUnits(Column.WIRE_LENGTH, Bounds.WIRE_LENGTH, "m", "mm"),
        cells.count(Column.WIRES_TOGETHER),
        names.loads.meantBy(cells.text(Column.LOAD)),
        cells.amount(Column.AMBIENT, Bounds.AMBIENT),
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
