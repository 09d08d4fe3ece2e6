package lowfirst.sheet.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lowfirst.assembly.AssemblyPlan;
import lowfirst.assembly.Step;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Item;
import lowfirst.board.Kit;
import lowfirst.board.OutputChannel;
import lowfirst.board.Unit;
import lowfirst.board.UnitChannels;
import lowfirst.channel.LoadFindings;
import lowfirst.channel.check.CheckKind;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Block.Cell;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.document.Tables;
import lowfirst.sheet.wording.DesignatorWords;
import lowfirst.sheet.wording.OrientationWords;
import lowfirst.sheet.wording.StepWording;

/** One unit from the last solder joint to its first loads: what to measure and when to stop. */
public final class FirstPowerDocument {
  private final Kit kit;
  private final AssemblyPlan plan;
  private final Board board;
  private final Unit unit;
  private final LoadFindings findings;
  private final List<Block> blocks = new ArrayList<>();

  private FirstPowerDocument(
      Kit kit, AssemblyPlan plan, Board board, Unit unit, LoadFindings findings) {
    this.kit = kit;
    this.plan = plan;
    this.board = board;
    this.unit = unit;
    this.findings = findings;
  }

  /**
   * The sheet of one unit.
   *
   * @param findings what was worked out of each channel; one that they lack is taken as undecided
   */
  public static Document of(
      Kit kit, AssemblyPlan plan, Board board, Unit unit, LoadFindings findings) {
    var document = new FirstPowerDocument(kit, plan, board, unit, findings);
    document.opening();
    List<PowerCheck> checks = FirstPowerChecks.of(kit, plan, unit, findings);
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
    FirstPowerChecks.cautions(kit, unit).forEach(words -> blocks.add(new Block.Caution(words)));
    blocks.add(
        new Block.Paragraph(
            "Work from the top. Go on only when a line is ticked; at a stop rule, power off first,"
                + " then look. Write what the meter says, not what it should say."
                + (UnitChannels.of(kit, unit).isEmpty() && kit.rails().size() > 1
                    ? " Leave out a rail that doesn't come to this board."
                    : "")));
  }

  private void stage(PowerCheck.Stage stage, List<PowerCheck> checks) {
    List<PowerCheck> here = checks.stream().filter(check -> check.stage() == stage).toList();
    if (here.isEmpty()) {
      return;
    }
    blocks.add(new Block.Heading(2, here.get(0).heading()));
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

  /** What is plugged in after the rail check isn't there yet. */
  private void polarity() {
    Set<Designator> later =
        plan.steps().stream()
            .filter(step -> step.board().equals(board.name()))
            .filter(step -> step.stage() == Step.Stage.PLUG_IN)
            .flatMap(step -> step.designators().stream())
            .collect(Collectors.toSet());
    var rows = new ArrayList<Table.Row>();
    for (Item item : board.items()) {
      List<Designator> soldered =
          item.designators().stream().filter(designator -> !later.contains(designator)).toList();
      if (item.isFitted() && item.partType().kind().isPolarised() && !soldered.isEmpty()) {
        rows.add(
            Tables.row(
                Cell.of(DesignatorWords.sorted(soldered)),
                Cell.of(StepWording.shortName(item.partType())),
                Cell.of(OrientationWords.of(item.partType())),
                Cell.box(false)));
      }
    }
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
            "Gate path: from the driver's pin to the return, driver unplugged; one that is soldered in"
                + " may lower the reading. Body diode: diode range, red on the return, black on the"
                + " MOSFET's drain, load unplugged: 0.3 V to 0.9 V, and open the other way round."
                + " Flyback diode: red on the drain, black on the rail's plus: 0.2 V to 0.9 V."));
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
