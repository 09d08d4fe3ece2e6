package lowfirst.sheet.swap;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Stream;
import lowfirst.assembly.Step;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Block.Caution;
import lowfirst.sheet.document.Block.Heading;
import lowfirst.sheet.document.Block.Paragraph;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.document.Tables;
import lowfirst.sheet.wording.DesignatorWords;
import lowfirst.sheet.wording.StepWording;
import lowfirst.sorting.LookAlike;
import lowfirst.swap.BoardChange;
import lowfirst.swap.ChannelChange;
import lowfirst.swap.SwapFinding;
import lowfirst.swap.SwapReason;
import lowfirst.swap.rule.SwapVerdict;

/**
 * Whether a substitute fits: the answer, every reason, the loads before and after, what it does to
 * the board, and what is not known. Channels whose numbers are alike are shown once.
 */
public final class SwapDocument {
  private static final int MOVED_SHOWN = 12;

  private SwapDocument() {}

  /** The findings of one question; a part type on several boards has one each. */
  public static Document of(List<SwapFinding> findings) {
    var blocks = new ArrayList<Block>();
    for (SwapFinding finding : findings) {
      if (findings.size() > 1) {
        blocks.add(new Heading(2, SwapWords.what(finding.swap())));
      }
      blocks.add(new Paragraph(capitalised(SwapWords.line(finding)) + "."));
      cautions(finding, blocks);
      missing(finding, blocks);
      blocks.add(reasons(finding));
      loads(finding, blocks);
      finding.board().ifPresent(board -> board(finding, board, blocks));
      blocks.add(whys(finding));
    }
    String title = "Swap: " + SwapWords.what(findings.get(0).swap());
    return new Document(findings.size() > 1 ? "Swap on several boards" : title, "", blocks);
  }

  /** Every reason and every changed check as one table, for machines. */
  public static Document table(List<SwapFinding> findings) {
    var rows = new ArrayList<Table.Row>();
    for (SwapFinding finding : findings) {
      String where = finding.swap().board().name();
      for (SwapReason reason : finding.reasons()) {
        rows.add(
            Tables.row(
                where,
                "rule",
                reason.rule().toString(),
                reason.verdict().words(),
                SwapWords.evidence(reason.answer().asked()),
                SwapWords.evidence(reason.answer().offered()),
                SwapWords.percent(reason.answer().margin()),
                String.join("; ", reason.answer().missing()),
                SwapWords.sources(reason.answer())));
      }
      for (ChannelChange channel : finding.channels()) {
        for (ChannelChange.Pair pair : channel.pairs()) {
          rows.add(
              Tables.row(
                  channel.use().channel().name(),
                  "check",
                  pair.kind().toString(),
                  pair.after().map(check -> check.verdict().words()).orElse(""),
                  SwapWords.check(pair.before()),
                  SwapWords.check(pair.after()),
                  SwapWords.margins(pair),
                  pair.after().map(check -> String.join("; ", check.missing())).orElse(""),
                  ""));
        }
      }
    }
    List<Table.Column> columns =
        Stream.of(
                "of",
                "what",
                "name",
                "says",
                "asked or before",
                "offered or after",
                "margin",
                "missing",
                "source")
            .map(header -> Tables.words(header, 1))
            .toList();
    return new Document("Swap", "", List.of(new Table("reasons", columns, rows)));
  }

  private static String capitalised(String text) {
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }

  private static void cautions(SwapFinding finding, List<Block> blocks) {
    if (finding.verdict() == SwapVerdict.DOES_NOT_FIT) {
      blocks.add(new Caution("Do not fit it here."));
    } else if (finding.verdict() == SwapVerdict.UNDECIDED) {
      blocks.add(
          new Caution("Not known is not safe: find what is missing below before you fit it."));
    }
    finding.reasons(finding.verdict()).stream()
        .map(reason -> reason.answer().remark())
        .filter(remark -> !remark.isBlank())
        .distinct()
        .forEach(remark -> blocks.add(new Paragraph(capitalised(remark) + ".")));
  }

  private static Table reasons(SwapFinding finding) {
    var rows = new ArrayList<Table.Row>();
    for (SwapReason reason : finding.reasons()) {
      rows.add(
          Tables.row(
              reason.rule().words(),
              SwapWords.evidence(reason.answer().asked()),
              SwapWords.evidence(reason.answer().offered()),
              SwapWords.percent(reason.answer().margin()),
              SwapWords.verdict(finding, reason)));
    }
    return new Table(
        "Part against part",
        List.of(
            Tables.words("rule", 26),
            Tables.words("asked", 28),
            Tables.words("offered", 28),
            Tables.number("margin"),
            Tables.words("says", 20)),
        rows);
  }

  private static Table whys(SwapFinding finding) {
    var rows = new ArrayList<Table.Row>();
    for (SwapReason reason : finding.reasons()) {
      rows.add(
          Tables.row(
              reason.rule().words(),
              reason.rule().why() + " [" + reason.rule().source() + "]",
              SwapWords.sources(reason.answer())));
    }
    return new Table(
        "Why each rule, and where its numbers stand",
        List.of(Tables.words("rule", 20), Tables.words("why", 44), Tables.words("from", 44)),
        rows);
  }

  private static void missing(SwapFinding finding, List<Block> blocks) {
    List<String> missing = finding.missing();
    if (!missing.isEmpty()) {
      blocks.add(
          new Table(
              "What is missing",
              List.of(Tables.words("find this", 1)),
              missing.stream().map(text -> Tables.row(text)).toList()));
    }
  }

  private static void loads(SwapFinding finding, List<Block> blocks) {
    for (List<ChannelChange> alike : alike(finding.channels())) {
      ChannelChange first = alike.get(0);
      var rows = new ArrayList<Table.Row>();
      for (ChannelChange.Pair pair : first.pairs()) {
        boolean own = first.use().role().checks().contains(pair.kind());
        if (own || pair.isChanged()) {
          rows.add(
              Tables.row(
                  pair.kind().words(),
                  SwapWords.check(pair.before()),
                  SwapWords.check(pair.after()),
                  SwapWords.margins(pair)));
        }
      }
      blocks.add(
          new Table(
              "For its load, as "
                  + SwapWords.role(first.use().role())
                  + " of "
                  + names(alike)
                  + ": "
                  + first.verdict().words(),
              List.of(
                  Tables.words("check", 26),
                  Tables.words("before", 26),
                  Tables.words("after", 26),
                  Tables.words("margin", 14)),
              rows));
    }
  }

  /** Channels whose every number is the same, together. */
  private static List<List<ChannelChange>> alike(List<ChannelChange> channels) {
    var groups = new LinkedHashMap<List<Object>, List<ChannelChange>>();
    for (ChannelChange channel : channels) {
      var key = new ArrayList<Object>();
      key.add(channel.use().role());
      for (ChannelChange.Pair pair : channel.pairs()) {
        key.add(pair.kind());
        key.add(SwapWords.check(pair.before()) + SwapWords.check(pair.after()));
      }
      groups.computeIfAbsent(key, first -> new ArrayList<>()).add(channel);
    }
    return List.copyOf(groups.values());
  }

  private static String names(List<ChannelChange> alike) {
    List<String> names = alike.stream().map(c -> c.use().channel().name()).toList();
    return names.size() <= 4
        ? String.join(", ", names)
        : names.get(0) + " and " + (names.size() - 1) + " more with the same numbers";
  }

  private static void board(SwapFinding finding, BoardChange board, List<Block> blocks) {
    var rows = new ArrayList<Table.Row>();
    board.before().ifPresent(before -> rows.add(Tables.row("its step now", step(before))));
    board.after().ifPresent(after -> rows.add(Tables.row("its step with the swap", step(after))));
    board.others().stream()
        .limit(MOVED_SHOWN)
        .map(
            moved ->
                Tables.row(
                    DesignatorWords.list(moved.designators()),
                    "moves from batch " + moved.fromBatch() + " to batch " + moved.toBatch()))
        .forEach(rows::add);
    int more = board.others().size() - MOVED_SHOWN;
    if (more > 0) {
      rows.add(Tables.row("and", more == 1 ? "1 step more moves" : more + " steps more move"));
    }
    board.newLookAlikes().forEach(pair -> rows.add(Tables.row("new look-alikes", pair(pair))));
    board.goneLookAlikes().forEach(pair -> rows.add(Tables.row("no longer alike", pair(pair))));
    if (rows.isEmpty()) {
      return;
    }
    blocks.add(
        new Table(
            "On " + finding.swap().board().name(),
            List.of(Tables.words("what", 20), Tables.words("how", 60)),
            rows));
  }

  private static String pair(LookAlike pair) {
    return StepWording.name(pair.one().type()) + " and " + StepWording.name(pair.other().type());
  }

  private static String step(Step step) {
    return "step " + step.number() + ": " + step.why();
  }
}
