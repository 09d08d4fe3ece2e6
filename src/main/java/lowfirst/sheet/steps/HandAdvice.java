package lowfirst.sheet.steps;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lowfirst.assembly.Step;
import lowfirst.progress.State;
import lowfirst.sheet.wording.StepWording;

/**
 * What to mind while a step is seated, soldered or inspected, and no more than that: a person at
 * the iron reads one thing at a time. The words are those of the assembly sheet.
 *
 * @param kind what sort of advice
 * @param text a sentence or two
 */
public record HandAdvice(Kind kind, String text) {

  /** The sorts of advice. */
  public enum Kind {
    WAY_ROUND("Way round"),
    HOW("How"),
    LOOK_ALIKE("Look-alike"),
    CAUTION("Caution");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** The label that people read. */
    public String words() {
      return words;
    }
  }

  /** What to mind in one round of a step, the most important for the hand first. */
  public static List<HandAdvice> of(Step step, State round) {
    var advice = new ArrayList<HandAdvice>();
    switch (round) {
      case SEATED -> {
        add(advice, Kind.WAY_ROUND, StepWording.wayRound(step));
        add(advice, Kind.HOW, StepWording.seat(step));
        StepWording.caution(step).ifPresent(text -> add(advice, Kind.CAUTION, text));
        if (step.stage() == Step.Stage.PLUG_IN) {
          add(
              advice,
              Kind.CAUTION,
              "power off, and only after the rail check: a wrong voltage destroys it at once.");
        }
      }
      case SOLDERED -> {
        add(advice, Kind.HOW, StepWording.solder(step));
        add(
            advice,
            Kind.CAUTION,
            "hot iron; keep out of the fumes. Cut ends fly: wear eye protection, hold each end.");
      }
      case INSPECTED -> {
        add(advice, Kind.HOW, StepWording.lookFor(step));
        add(advice, Kind.WAY_ROUND, StepWording.wayRound(step));
      }
      case TO_DO, SET_ASIDE -> {}
    }
    return List.copyOf(advice);
  }

  private static void add(List<HandAdvice> advice, Kind kind, String text) {
    if (!text.isBlank()) {
      advice.add(
          new HandAdvice(kind, text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1)));
    }
  }
}
