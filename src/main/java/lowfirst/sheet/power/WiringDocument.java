package lowfirst.sheet.power;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lowfirst.board.Designator;
import lowfirst.board.Kit;
import lowfirst.board.Load;
import lowfirst.board.OutputChannel;
import lowfirst.board.Rail;
import lowfirst.board.SupplyUnit;
import lowfirst.channel.LoadFindings;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Verdict;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Sourced;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Block.Cell;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.document.Tables;

/**
 * Every wire of the kit: from, to, size, length, contact, fuse, drop; the colour is the builder's.
 */
public final class WiringDocument {
  private final Kit kit;
  private final LoadFindings findings;

  private WiringDocument(Kit kit, LoadFindings findings) {
    this.kit = kit;
    this.findings = findings;
  }

  /** The wiring list; {@code findings} by channel name may lack some. */
  public static Document of(Kit kit, LoadFindings findings) {
    var document = new WiringDocument(kit, findings);
    var blocks = new ArrayList<Block>();
    blocks.add(
        new Block.Caution(
            "Wire with every supply off and unplugged. Mains, protective earth and anything above"
                + " 60 V DC: local code and a licensed electrician."));
    document.supplies(blocks);
    document.loads(blocks);
    return new Document("Wiring list", kit.settings().title(), blocks);
  }

  private void supplies(List<Block> blocks) {
    Set<String> powerRails = new LinkedHashSet<>();
    kit.loads().forEach(load -> powerRails.add(load.rail()));
    List<Rail> logic =
        kit.rails().stream().filter(rail -> !powerRails.contains(rail.name())).toList();
    List<Rail> power =
        kit.rails().stream().filter(rail -> powerRails.contains(rail.name())).toList();
    blocks.add(new Block.Heading(2, "Logic supply"));
    blocks.add(
        new Block.Paragraph(
            "Its return goes to the boards in a wire of its own. The loads' return must not flow"
                + " through it: the drop would lift the gates' reference. Join the returns in one"
                + " point only, at the supplies."));
    blocks.add(rails(logic, "rails.csv names no supply that is free of loads."));
    blocks.add(new Block.Heading(2, "Supplies of the loads, and their returns"));
    blocks.add(
        new Block.Paragraph(
            "Each return carries the sum of what its loads take at once: it must be as thick as"
                + " the plus wire, and no thinner."));
    blocks.add(rails(power, "The kit's tables name no supply of a load."));
    for (SupplyUnit supply : kit.supplies()) {
      blocks.add(
          new Block.Paragraph(
              "One supply unit, "
                  + supply.name()
                  + ", feeds "
                  + String.join(", ", supply.rails())
                  + ": together at most "
                  + amount(supply.powerLimit())
                  + "."));
    }
  }

  private static Block rails(List<Rail> rails, String none) {
    return rails.isEmpty() ? new Block.Paragraph(none) : railTable(rails);
  }

  private static Table railTable(List<Rail> rails) {
    var rows = new ArrayList<Table.Row>();
    for (Rail rail : rails) {
      String size = known(rail.returnWire(), "rails.csv");
      String length = amount(rail.returnLength());
      String limit = amount(rail.currentLimit());
      String contacts =
          rail.returnContacts().isPresent()
              ? rail.returnContacts().getAsInt() + " × " + amount(rail.contactRating())
              : amount(rail.contactRating());
      rows.add(
          wire(
              "supply " + rail.name() + " +",
              "boards, " + rail.name() + " +",
              size,
              length,
              contacts,
              limit));
      rows.add(
          wire(
              "boards, return of " + rail.name(),
              "supply " + rail.name() + " −",
              size,
              length,
              contacts,
              limit));
    }
    return new Table(
        "",
        List.of(
            Tables.words("From", 3),
            Tables.words("To", 3),
            Tables.words("Size", 1.5),
            Tables.words("Length", 1),
            Tables.words("Contacts", 1.5),
            Tables.words("Supply gives at most", 1.5),
            Tables.words("Colour", 1.2),
            Tables.boxes("Done")),
        rows);
  }

  private static Table.Row wire(String... words) {
    var cells = new ArrayList<Cell>();
    for (String word : words) {
      cells.add(Cell.of(word));
    }
    cells.add(Cell.field(""));
    cells.add(Cell.box(false));
    return new Table.Row(cells);
  }

  private void loads(List<Block> blocks) {
    if (kit.channels().isEmpty()) {
      return;
    }
    blocks.add(new Block.Heading(2, "Loads"));
    blocks.add(
        new Block.Paragraph(
            "Two wires to each load: one from the rail's plus, one back to the channel's output."
                + " Length is one way; the drop counts both."));
    leftUnplugged(Verdict.OVERLOADED, "Overloaded: see in the channel report what to change.")
        .ifPresent(blocks::add);
    leftUnplugged(Verdict.UNDECIDED, "Undecided: see in the channel report what is missing.")
        .ifPresent(blocks::add);
    blocks.add(
        new Table(
            "",
            List.of(
                Tables.words("Channel output", 2.2),
                Tables.words("Load", 2),
                Tables.words("Plus from", 1.2),
                Tables.words("Size", 1.2),
                Tables.words("Length", 1),
                Tables.words("Contact", 1),
                Tables.words("Fuse", 1.5),
                Tables.words("Drop", 1.2),
                Tables.words("Colour", 1.2),
                Tables.boxes("Done")),
            kit.channels().stream().map(this::channelRow).toList()));
  }

  /** Which loads may be wired, but not plugged in yet. */
  private Optional<Block> leftUnplugged(Verdict verdict, String why) {
    List<String> outputs =
        kit.channels().stream()
            .filter(channel -> verdictOf(channel) == verdict)
            .map(channel -> channel.name() + " (" + channel.load() + ")")
            .toList();
    return outputs.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Block.Caution(
                "Wire, but leave unplugged: " + String.join(", ", outputs) + ". " + why));
  }

  private Table.Row channelRow(OutputChannel channel) {
    return Tables.row(
        Cell.of(channel.name()),
        Cell.of(channel.load() + (isLeftUnplugged(channel) ? ": leave unplugged" : "")),
        Cell.of(kit.railOf(channel).map(r -> r.name() + " +").orElse("not known")),
        Cell.of(known(channel.wire(), "channels.csv")),
        Cell.of(amount(channel.wireLength())),
        Cell.of(amount(channel.contactRating())),
        Cell.of(fuse(channel)),
        Cell.of(drop(channel)),
        Cell.field(""),
        Cell.box(false));
  }

  private boolean isLeftUnplugged(OutputChannel channel) {
    return kit.load(channel.load()).isPresent() && verdictOf(channel) != Verdict.CARRIES;
  }

  /** Of the output, and of the supply and return that its load hangs on. */
  private Verdict verdictOf(OutputChannel channel) {
    String rail = kit.load(channel.load()).map(Load::rail).orElse("");
    return findings.verdictOf(channel).worse(findings.supplyVerdictOf(rail));
  }

  private String fuse(OutputChannel channel) {
    if (channel.fuse().isEmpty()) {
      return "none";
    }
    Designator fuse = channel.fuse().get();
    return kit.board(channel.board())
        .flatMap(board -> board.itemOf(fuse))
        .map(item -> fuse + ", " + item.partType().text())
        .orElse(fuse.text());
  }

  private String drop(OutputChannel channel) {
    return findings
        .actual(channel, CheckKind.WIRE_DROP)
        .map(volts -> volts.rounded(2))
        .orElse("not known");
  }

  private static String amount(Optional<Sourced> amount) {
    return amount
        .map(Sourced::quantity)
        .map(
            quantity ->
                quantity.dimension() == lowfirst.quantity.Dimension.LENGTH
                    ? length(quantity)
                    : quantity.toString())
        .orElse("not stated");
  }

  /** Wires are measured in metres. */
  private static String length(Quantity millimetres) {
    return new Quantity(millimetres.amount().movePointLeft(3), lowfirst.quantity.Dimension.RATIO)
            .toString()
        + " m";
  }

  private static String known(String text, String file) {
    return text.isBlank() ? "not stated, see " + file : text.replaceFirst("mm2$", "mm²");
  }
}
