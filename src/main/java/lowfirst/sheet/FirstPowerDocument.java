package lowfirst.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Item;
import lowfirst.board.Kit;
import lowfirst.board.OutputChannel;
import lowfirst.board.Unit;
import lowfirst.board.UnitChannels;
import lowfirst.channel.LoadFindings;
import lowfirst.channel.check.CheckKind;
import lowfirst.sheet.Block.Cell;
import lowfirst.sheet.Block.Table;

/** One unit from the last solder joint to its first loads: what to measure and when to stop. */
final class FirstPowerDocument {
  private final Kit kit;
  private final Board board;
  private final Unit unit;
  private final LoadFindings findings;
  private final List<Block> blocks = new ArrayList<>();

  private FirstPowerDocument(Kit kit, Board board, Unit unit, LoadFindings findings) {
    this.kit = kit;
    this.board = board;
    this.unit = unit;
    this.findings = findings;
  }

  /**
   * The sheet of one unit.
   *
   * @param findings what was worked out of each channel; one that they lack is taken as undecided
   */
  static Document of(Kit kit, Board board, Unit unit, LoadFindings findings) {
    var document = new FirstPowerDocument(kit, board, unit, findings);
    document.opening();
    List<PowerCheck> checks = FirstPowerChecks.of(kit, unit, findings);
    document.stage(PowerCheck.Stage.BEFORE_POWER, checks);
    document.polarity();
    document.channelsBeforePower();
    for (PowerCheck.Stage stage : PowerCheck.Stage.values()) {
      if (stage != PowerCheck.Stage.BEFORE_POWER) {
        document.stage(stage, checks);
      }
      if (stage == PowerCheck.Stage.CHIPS) {
        document.outputs();
      }
    }
    return new Document(
        "First power", kit.settings().title() + " · unit " + unit.serial(), document.blocks);
  }

  private void opening() {
    blocks.add(
        new Block.Caution(
            "Mains wiring, protective earth, and anything above 60 V DC are not on this sheet:"
                + " local code and a licensed electrician decide there. Use a finished supply"
                + " with a current limit."));
    blocks.add(
        new Block.Caution(
            "Large capacitors stay charged after power is off: wait, and measure before you touch."
                + " A coil held on too long overheats."));
    blocks.add(
        new Block.Paragraph(
            "Work from the top. Go on only when a line is ticked; at a stop rule, power off first,"
                + " then look. Write what the meter says, not what it should say."));
  }

  private void stage(PowerCheck.Stage stage, List<PowerCheck> checks) {
    List<PowerCheck> here = checks.stream().filter(check -> check.stage() == stage).toList();
    if (here.isEmpty()) {
      return;
    }
    blocks.add(new Block.Heading(2, stage.words()));
    blocks.add(
        new Table(
            "",
            List.of(
                Tables.words("Check", 2),
                Tables.words("Do", 4),
                Tables.words("Expect", 3),
                Tables.words("Stop when", 3),
                Tables.words("Reading", 1.4),
                Tables.boxes("Good")),
            here.stream()
                .map(
                    check ->
                        Tables.row(
                            Cell.of(check.name()),
                            Cell.of(check.how()),
                            Cell.of(check.expect()),
                            Cell.of(check.stop()),
                            Cell.field(""),
                            Cell.box(false)))
                .toList()));
  }

  private void polarity() {
    List<Table.Row> rows =
        board.items().stream()
            .filter(Item::isFitted)
            .filter(item -> item.partType().kind().isPolarised())
            .filter(item -> !item.designators().isEmpty())
            .map(
                item ->
                    Tables.row(
                        Cell.of(DesignatorWords.sorted(item.designators())),
                        Cell.of(StepWording.shortName(item.partType())),
                        Cell.of(OrientationWords.of(item.partType())),
                        Cell.box(false)))
            .toList();
    if (rows.isEmpty()) {
      return;
    }
    blocks.add(new Block.Heading(2, "Before power: which way round"));
    blocks.add(
        new Table(
            "",
            List.of(
                Tables.words("Where", 3),
                Tables.words("Part", 2.5),
                Tables.words("Look for", 5),
                Tables.boxes("Good")),
            rows));
  }

  /** Each channel with the meter alone. */
  private void channelsBeforePower() {
    List<OutputChannel> channels = UnitChannels.of(kit, unit);
    if (channels.isEmpty()) {
      return;
    }
    blocks.add(new Block.Heading(2, "Before power: channel by channel"));
    blocks.add(
        new Block.Paragraph(
            "Gate path: from the driver's pin to the return, driver out of its socket. Body diode:"
                + " diode range, red on the return, black on the MOSFET's drain, load unplugged:"
                + " 0.3 V to 0.9 V, and open the other way round. Flyback diode: red on the drain,"
                + " black on the rail's plus: 0.2 V to 0.9 V."));
    blocks.add(
        new Table(
            "",
            List.of(
                Tables.words("Channel", 2),
                Tables.words("Parts", 2),
                Tables.words("Gate path, expect", 3),
                Tables.words("Reading", 1.4),
                Tables.words("Body diode", 1.4),
                Tables.words("Flyback diode", 1.4),
                Tables.boxes("Good")),
            channels.stream().map(this::unpoweredRow).toList()));
  }

  private Table.Row unpoweredRow(OutputChannel channel) {
    String parts =
        Stream.of(channel.mosfet(), channel.gateResistor(), channel.pullDown(), channel.fuse())
            .flatMap(Optional::stream)
            .map(Designator::text)
            .collect(Collectors.joining(", "));
    return Tables.row(
        Cell.of(channel.name()),
        Cell.of(parts),
        Cell.of(GatePath.words(board, channel)),
        Cell.field(""),
        Cell.field(""),
        channel.flybackDiode().isPresent() ? Cell.field("") : Cell.of("none"),
        Cell.box(false));
  }

  /** Each output switched on with nothing connected to it. */
  private void outputs() {
    List<OutputChannel> channels = UnitChannels.of(kit, unit);
    if (channels.isEmpty()) {
      return;
    }
    blocks.add(new Block.Heading(2, "Stage 2: each output in turn, loads unplugged"));
    blocks.add(
        new Table(
            "",
            List.of(
                Tables.words("Channel", 2),
                Tables.words("Measure at the gate of", 2),
                Tables.words("Off, expect", 2),
                Tables.words("Reading", 1.4),
                Tables.words("On, expect", 2),
                Tables.words("Reading", 1.4),
                Tables.boxes("Good")),
            channels.stream()
                .map(
                    channel ->
                        Tables.row(
                            Cell.of(channel.name()),
                            Cell.of(channel.mosfet().map(Designator::text).orElse("not named")),
                            Cell.of(gateOff(channel)),
                            Cell.field(""),
                            Cell.of(gateOn(channel)),
                            Cell.field(""),
                            Cell.box(false)))
                .toList()));
  }

  private String gateOff(OutputChannel channel) {
    return kit.driver(channel.driver())
        .flatMap(driver -> driver.lowLevelMax())
        .map(low -> "at most " + low.quantity())
        .orElse("near 0 V");
  }

  private String gateOn(OutputChannel channel) {
    return findings
        .actual(channel, CheckKind.GATE_LEVEL)
        .map(volts -> "at least " + volts.rounded(3))
        .orElse("not known");
  }
}
