package lowfirst.swap;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import lowfirst.board.Kit;
import lowfirst.channel.ChannelFinding;
import lowfirst.channel.ChannelInputs;
import lowfirst.channel.Check;
import lowfirst.channel.CheckKind;
import lowfirst.channel.KitInputs;
import lowfirst.channel.PartData;
import lowfirst.part.BodyOutlines;
import lowfirst.part.DatasheetLine;
import lowfirst.part.Datasheets;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;

/**
 * Looks through a whole drawer for what fits one place: the same rules and the same channel checks
 * as for a single swap, with everything that does not depend on the candidate worked out once, and
 * only the {@link HardestChannels} tried. Time grows with the drawer and nothing else.
 */
public final class DrawerSearch {
  private static final Worst NOTHING = new Worst();

  private final SwapTarget target;
  private final Kit kit;
  private final SwapCase question;
  private final List<SwapRule> rules;
  private final Map<SwapUse.Role, List<ChannelInputs>> channels;
  private final boolean answerable;
  private final int most;
  private final PriorityQueue<DrawerHit> best =
      queue(Comparator.comparingDouble(DrawerHit::margin));
  private final PriorityQueue<DrawerHit> near =
      queue(Comparator.comparingDouble(DrawerHit::margin));
  private final PriorityQueue<DrawerHit> open =
      queue(Comparator.comparing((DrawerHit hit) -> hit.lacks().size()).reversed());
  private final int[] counts = new int[SwapVerdict.values().length];

  private DrawerSearch(SwapTarget target, Kit kit, BodyOutlines outlines, int most) {
    this.target = target;
    this.kit = kit;
    this.most = most;
    this.question = target.with(kit, target.item().partType().text(), outlines);
    this.rules = SwapRules.of(target.item().partType().kind());
    this.answerable = question.servesOnlyChannels();
    this.channels = hardest(KitInputs.of(SwappedKit.of(kit, outlines)));
  }

  private static PriorityQueue<DrawerHit> queue(Comparator<DrawerHit> worstFirst) {
    return new PriorityQueue<>(
        worstFirst
            .thenComparingDouble(DrawerHit::mean)
            .thenComparing(DrawerHit::partType, Comparator.reverseOrder()));
  }

  /**
   * What a drawer holds for a place.
   *
   * @param most how many of each sort are kept
   */
  public static DrawerResult of(
      SwapTarget target, Kit kit, Datasheets drawer, BodyOutlines outlines, int most) {
    var search = new DrawerSearch(target, kit, outlines, most);
    drawer.byPartType().forEach(search::look);
    return search.result();
  }

  private Map<SwapUse.Role, List<ChannelInputs>> hardest(KitInputs inputs) {
    var byRole = new EnumMap<SwapUse.Role, List<ChannelInputs>>(SwapUse.Role.class);
    for (SwapUse use : question.uses()) {
      inputs
          .channel(use.channel().name())
          .ifPresent(in -> byRole.computeIfAbsent(use.role(), first -> new ArrayList<>()).add(in));
    }
    byRole.replaceAll((role, served) -> hungriestFirst(HardestChannels.among(served)));
    return byRole;
  }

  /** The channel that most parts fail in goes first, so that few are tried in all. */
  private static List<ChannelInputs> hungriestFirst(List<ChannelInputs> hardest) {
    return hardest.stream()
        .sorted(Comparator.comparingDouble(ChannelInputs::loadAmps).reversed())
        .toList();
  }

  private void look(List<DatasheetLine> drawerLines) {
    String name = drawerLines.get(0).partType();
    PartKind asked = target.item().partType().kind();
    Optional<PartKind> stated = FittedPart.kind(drawerLines);
    if (stated.isPresent() && !PlaceRule.mayReplace(asked, stated.get())) {
      counts[SwapVerdict.DOES_NOT_FIT.ordinal()]++;
      return;
    }
    List<DatasheetLine> lines = completed(name, drawerLines);
    PartType type = FittedPart.of(name, target.item().partType(), lines);
    SwapCase swap = question.offering(SwapPart.of(type, lines));
    judge(name, swap);
  }

  /** The drawer's own lines, and the kit's for every symbol that it leaves out. */
  private List<DatasheetLine> completed(String name, List<DatasheetLine> own) {
    List<DatasheetLine> known = kit.datasheets().about(name);
    if (known.isEmpty()) {
      return own;
    }
    var all = new ArrayList<>(own);
    for (DatasheetLine line : known) {
      if (own.stream().noneMatch(other -> other.symbol().equals(line.symbol()))) {
        all.add(line);
      }
    }
    return all;
  }

  private void judge(String name, SwapCase swap) {
    var tally = new Tally();
    var deferred = new ArrayList<SwapReason>(4);
    for (SwapRule rule : rules) {
      Optional<Answer> answer = rule.judge(swap);
      if (answer.isPresent()) {
        var reason = new SwapReason(rule, answer.get(), List.of());
        if (answerable && !rule.answeredBy().isEmpty()) {
          deferred.add(reason);
        } else {
          tally.add(reason);
        }
      }
      if (tally.isHopeless(NOTHING)) {
        counts[SwapVerdict.DOES_NOT_FIT.ordinal()]++;
        return;
      }
    }
    Worst checked = loads(swap, tally);
    for (SwapReason reason : deferred) {
      if (!isAnswered(reason, checked)) {
        tally.add(reason);
      }
    }
    keep(new DrawerHit(name, tally.verdict(), tally.margin, tally.mean(), tally.lacks));
  }

  /** Whether the channels answer it: they all carry, or their failing counts already. */
  private static boolean isAnswered(SwapReason reason, Worst checked) {
    boolean any = false;
    SwapVerdict worst = SwapVerdict.FITS;
    for (CheckKind kind : reason.rule().answeredBy()) {
      SwapVerdict verdict = checked.byKind.get(kind);
      if (verdict != null) {
        any = true;
        worst = worst.worse(verdict);
      }
    }
    boolean carried = any && worst == SwapVerdict.FITS;
    boolean counted = worst != SwapVerdict.FITS && worst.worse(reason.answer().verdict()) == worst;
    return carried || counted;
  }

  /** Tries the hardest channels; says of each check the worst that it found. */
  private Worst loads(SwapCase swap, Tally tally) {
    var worst = new Worst();
    PartType type = swap.offered().type();
    for (var served : channels.entrySet()) {
      Set<CheckKind> wanted = served.getKey().checks();
      PartData.Role role = role(served.getKey());
      PartData part = PartData.of(role, type, swap.offered().lines(), type.text());
      for (ChannelInputs channel : served.getValue()) {
        for (Check check : ChannelFinding.checksOn(role, channel.with(part))) {
          if (wanted.contains(check.kind())) {
            worst.add(check.kind(), ChannelChange.verdict(check.verdict()));
            tally.add(check);
          }
        }
        if (tally.isHopeless(worst)) {
          tally.lackOf(worst);
          return worst;
        }
      }
    }
    tally.lackOf(worst);
    return worst;
  }

  private static PartData.Role role(SwapUse.Role role) {
    return switch (role) {
      case MOSFET -> PartData.Role.SWITCH;
      case GATE_RESISTOR -> PartData.Role.GATE_RESISTOR;
      case PULL_DOWN -> PartData.Role.PULL_DOWN;
      case FLYBACK_DIODE -> PartData.Role.FLYBACK_DIODE;
      case FUSE -> PartData.Role.FUSE;
      case STAGE -> PartData.Role.STAGE;
    };
  }

  private void keep(DrawerHit hit) {
    counts[hit.verdict().ordinal()]++;
    switch (hit.verdict()) {
      case FITS -> offer(best, hit);
      case UNDECIDED -> offer(open, hit);
      case DOES_NOT_FIT -> {
        if (hit.lacks().size() == 1) {
          offer(near, hit);
        }
      }
    }
  }

  private void offer(PriorityQueue<DrawerHit> kept, DrawerHit hit) {
    kept.add(hit);
    if (kept.size() > most) {
      kept.poll();
    }
  }

  private DrawerResult result() {
    return new DrawerResult(
        question,
        counts[SwapVerdict.FITS.ordinal()],
        counts[SwapVerdict.UNDECIDED.ordinal()],
        counts[SwapVerdict.DOES_NOT_FIT.ordinal()],
        bestFirst(best),
        bestFirst(near),
        bestFirst(open));
  }

  private static List<DrawerHit> bestFirst(PriorityQueue<DrawerHit> kept) {
    var hits = new ArrayList<DrawerHit>();
    while (!kept.isEmpty()) {
      hits.add(0, kept.poll());
    }
    return hits;
  }

  /** The worst that each check of the channels came to. */
  private static final class Worst {
    private final Map<CheckKind, SwapVerdict> byKind = new EnumMap<>(CheckKind.class);

    void add(CheckKind kind, SwapVerdict found) {
      byKind.merge(kind, found, SwapVerdict::worse);
    }

    int count(SwapVerdict verdict) {
      int count = 0;
      for (SwapVerdict found : byKind.values()) {
        count += found == verdict ? 1 : 0;
      }
      return count;
    }
  }

  /** What has been found of one candidate so far. */
  private static final class Tally {
    private int misfits;
    private int undecided;
    private double margin = Double.POSITIVE_INFINITY;
    private double sum = 0;
    private int sized = 0;
    private final List<String> lacks = new ArrayList<>(2);

    void add(SwapReason reason) {
      count(reason.verdict());
      reason.answer().margin().ifPresent(this::bound);
      if (reason.verdict() != SwapVerdict.FITS) {
        lacks.add(reason.rule().words());
      }
    }

    void add(Check check) {
      if (!Double.isNaN(check.margin())) {
        bound(check.margin());
      }
    }

    private void bound(double size) {
      margin = Math.min(margin, size);
      sum += Math.min(size, 1);
      sized++;
    }

    /**
     * Whether it neither fits nor nearly fits, whatever else is found: one thing is amiss, and
     * another is amiss or open.
     */
    private boolean isHopeless(Worst more) {
      int amiss = misfits + more.count(SwapVerdict.DOES_NOT_FIT);
      return amiss > 0 && amiss + undecided + more.count(SwapVerdict.UNDECIDED) > 1;
    }

    private double mean() {
      return sized == 0 ? 0 : sum / sized;
    }

    void lackOf(Worst checked) {
      checked.byKind.forEach(
          (kind, verdict) -> {
            count(verdict);
            if (verdict != SwapVerdict.FITS) {
              lacks.add(kind.words());
            }
          });
    }

    private void count(SwapVerdict verdict) {
      misfits += verdict == SwapVerdict.DOES_NOT_FIT ? 1 : 0;
      undecided += verdict == SwapVerdict.UNDECIDED ? 1 : 0;
    }

    SwapVerdict verdict() {
      if (misfits > 0) {
        return SwapVerdict.DOES_NOT_FIT;
      }
      return undecided > 0 ? SwapVerdict.UNDECIDED : SwapVerdict.FITS;
    }
  }
}
