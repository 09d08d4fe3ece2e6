package lowfirst.sheet.loads;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import lowfirst.channel.ChannelStudy;
import lowfirst.channel.OnCurrent;
import lowfirst.channel.Sensitivity;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Block.Facts;
import lowfirst.sheet.document.Block.Figure;
import lowfirst.sheet.document.Block.Heading;
import lowfirst.sheet.document.Block.Paragraph;
import lowfirst.sheet.wording.Sentence;

/**
 * What a report says of one channel, and of all whose numbers are the same.
 *
 * @param alike those channels, never none
 */
record ChannelSection(List<ChannelStudy> alike) {
  private static final int SENSITIVITIES_SHOWN = 3;

  ChannelSection {
    alike = List.copyOf(alike);
  }

  /** A section for all that are alike, in the order of the first of each. */
  static List<ChannelSection> of(List<ChannelStudy> studies) {
    Map<List<Object>, List<ChannelStudy>> groups = new LinkedHashMap<>();
    for (ChannelStudy study : studies) {
      groups.computeIfAbsent(likeness(study), none -> new ArrayList<>()).add(study);
    }
    return groups.values().stream().map(ChannelSection::new).toList();
  }

  private static List<Object> likeness(ChannelStudy study) {
    return study.finding().checks().stream()
        .<Object>map(
            check ->
                List.of(
                    check.kind(),
                    check.actualAmount(),
                    check.allowedAmount(),
                    check.verdict(),
                    check.missing().size()))
        .toList();
  }

  /** What to change, what to measure, what heats it, and every check. */
  List<Block> blocks(CheckTables tables) {
    ChannelStudy study = alike.get(0);
    var blocks = new ArrayList<Block>();
    blocks.add(new Heading(2, names()));
    blocks.add(new Paragraph(Sentence.of(LoadsWords.line(study))));
    if (alike.size() > 1) {
      blocks.add(
          new Paragraph(
              "The sources below are those of "
                  + study.inputs().channel().name()
                  + "; the others have the same numbers in their own rows."));
    }
    ChangeTable.of(study.remedies()).ifPresent(blocks::add);
    blocks.add(new Facts(measured(study)));
    study
        .curve()
        .map(ChannelPlot::of)
        .ifPresent(drawing -> blocks.add(new Figure(drawing, drawing.words())));
    blocks.addAll(ReleaseWords.blocks(study));
    blocks.addAll(tables.of(study.inputs().channel().name(), study.finding().checks()));
    return blocks;
  }

  private String names() {
    String first = "Channel " + alike.get(0).inputs().channel().name();
    if (alike.size() == 1) {
      return first;
    }
    return alike.size() == 2
        ? first + " and " + alike.get(1).inputs().channel().name()
        : first
            + " and "
            + (alike.size() - 1)
            + " alike, to "
            + alike.get(alike.size() - 1).inputs().channel().name();
  }

  private static List<Facts.Fact> measured(ChannelStudy study) {
    var facts = new ArrayList<Facts.Fact>();
    double gate = study.inputs().gateVolts();
    if (Double.isFinite(gate) && !study.curve().isEmpty()) {
      facts.add(
          new Facts.Fact(
              "measure",
              String.format(
                  Locale.ROOT,
                  "gate to source at least %.2f V when on; about %s in the load, cold, never more"
                      + " than %s",
                  gate,
                  LoadsWords.amps(OnCurrent.amperes(study.inputs())),
                  LoadsWords.amps(study.inputs().loadAmps()))));
    }
    ReleaseWords.fact(study).ifPresent(facts::add);
    String matters =
        study.sensitivities().stream()
            .limit(SENSITIVITIES_SHOWN)
            .map(ChannelSection::sensitivity)
            .collect(Collectors.joining("; "));
    facts.add(
        new Facts.Fact("matters most, a tenth worse", matters.isEmpty() ? "nothing" : matters));
    return facts;
  }

  private static String sensitivity(Sensitivity sensitivity) {
    String part = LoadsWords.part(sensitivity.check());
    return sensitivity.used() < 1
        ? String.format(
            Locale.ROOT,
            "%s (%.0f %% of what %s has left)",
            LoadsWords.noun(sensitivity.term()),
            100 * sensitivity.used(),
            part)
        : LoadsWords.noun(sensitivity.term()) + " (then " + part + " fails)";
  }
}
