package lowfirst.swap;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lowfirst.board.Kit;
import lowfirst.channel.ChannelFinding;
import lowfirst.channel.ChannelInputs;
import lowfirst.channel.KitInputs;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.Role;
import lowfirst.channel.data.PartData;
import lowfirst.part.BodyOutlines;
import lowfirst.part.DatasheetLine;
import lowfirst.part.Datasheets;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.swap.rule.Answer;
import lowfirst.swap.rule.PlaceRule;
import lowfirst.swap.rule.SwapRule;
import lowfirst.swap.rule.SwapRules;
import lowfirst.swap.subject.FittedPart;
import lowfirst.swap.subject.SwapCase;
import lowfirst.swap.subject.SwapPart;
import lowfirst.swap.subject.SwapUse;
import lowfirst.swap.subject.SwappedKit;

/**
 * Looks through a whole drawer for what fits one place: the same rules and the same channel checks
 * as for a single swap, with everything that does not depend on the candidate worked out once, and
 * only the {@link HardestChannels} tried. Time grows with the drawer and nothing else.
 */
public final class DrawerSearch {
  private static final WorstChecks NOTHING = new WorstChecks();

  private final SwapTarget target;
  private final Kit kit;
  private final SwapCase question;
  private final List<SwapRule> rules;
  private final Map<Role, List<ChannelInputs>> channels;
  private final boolean answerable;
  private final DrawerShortlists sorted;

  private DrawerSearch(SwapTarget target, Kit kit, BodyOutlines outlines, int most) {
    this.target = target;
    this.kit = kit;
    this.sorted = new DrawerShortlists(most);
    this.question = target.with(kit, target.item().partType().text(), outlines);
    this.rules = SwapRules.of(target.item().partType().kind());
    this.answerable = question.servesOnlyChannels();
    this.channels = hardest(KitInputs.of(SwappedKit.of(kit, outlines)));
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
    return search.sorted.result(search.question);
  }

  private Map<Role, List<ChannelInputs>> hardest(KitInputs inputs) {
    var byRole = new EnumMap<Role, List<ChannelInputs>>(Role.class);
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
      sorted.misfit();
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
    var tally = new DrawerTally();
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
        sorted.misfit();
        return;
      }
    }
    WorstChecks checked = loads(swap, tally);
    for (SwapReason reason : deferred) {
      if (!checked.answers(reason)) {
        tally.add(reason);
      }
    }
    sorted.add(tally.hit(name));
  }

  /** Tries the hardest channels; says of each check the worst that it found. */
  private WorstChecks loads(SwapCase swap, DrawerTally tally) {
    var worst = new WorstChecks();
    PartType type = swap.offered().type();
    for (var served : channels.entrySet()) {
      Role role = served.getKey();
      PartData part = PartData.of(role, type, swap.offered().lines(), type.text());
      for (ChannelInputs channel : served.getValue()) {
        for (Check check : ChannelFinding.checksOn(role, channel.with(part))) {
          if (role.checks().contains(check.kind())) {
            worst.add(check.kind(), ChannelChange.verdict(check.verdict()));
            tally.add(check);
          }
        }
        if (tally.isHopeless(worst)) {
          tally.add(worst);
          return worst;
        }
      }
    }
    tally.add(worst);
    return worst;
  }
}
