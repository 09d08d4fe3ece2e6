package lowfirst.bench.screen;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import lowfirst.assembly.Step;
import lowfirst.bench.page.SpotScreen;
import lowfirst.progress.Event;
import lowfirst.progress.HistoryLine;
import lowfirst.progress.Progress;
import lowfirst.progress.Spot;
import lowfirst.progress.SpotRecord;
import lowfirst.sheet.progress.ProgressWords;
import lowfirst.sheet.wording.StepWording;

/** Puts one part of one unit on the screen. */
public final class SpotScreens {
  private SpotScreens() {}

  /** One place of one unit, its history in the time of the bench. */
  public static SpotScreen of(Progress progress, Spot spot, ZoneId zone) {
    SpotRecord record = progress.record(spot);
    Optional<Step> step = progress.plan().stepOf(spot.unit().board(), spot.designator());
    var history = new ArrayList<>(progress.log().history(spot));
    Collections.reverse(history);
    return new SpotScreen(
        spot.designator().text(),
        spot.unit().serial(),
        step.map(known -> StepWording.shortName(known.partType())).orElse("no longer in the plan"),
        record.state().words() + record.reasonSetAside().map(reason -> ", " + reason).orElse(""),
        record.substitution().map(Event.Substitution::fitted),
        step.map(known -> "/step/" + known.number()),
        Rounds.of(progress, step, List.of(spot), List.of(spot)),
        history.stream().map(line -> line(line, zone)).toList());
  }

  private static SpotScreen.Line line(HistoryLine line, ZoneId zone) {
    return new SpotScreen.Line(
        ProgressWords.time(line.event().when(), zone),
        line.event().who(),
        ProgressWords.event(line.event()),
        line.standing() == HistoryLine.Standing.UNDONE ? "undone" : "");
  }
}
