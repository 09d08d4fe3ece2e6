package lowfirst.bench.screen;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.assembly.Step;
import lowfirst.bench.page.FoundScreen;
import lowfirst.bench.page.FoundScreen.Hit;
import lowfirst.board.Designator;
import lowfirst.marking.BandSequence;
import lowfirst.marking.ColourCode;
import lowfirst.marking.PrintedCode;
import lowfirst.marking.WrittenValue;
import lowfirst.progress.Progress;
import lowfirst.quantity.Quantity;
import lowfirst.sheet.wording.StepWording;

/** Finds steps by what is typed or scanned: a step, a designator, a marking, words. */
public final class FoundSteps {
  private static final Pattern STEP = Pattern.compile("(?i)(?:.*/step/|step\\s*)(\\d{1,6})\\b.*");

  private final Progress progress;
  private final String asked;
  private final Set<Step> steps = new LinkedHashSet<>();

  /** How each step was found. */
  private final Set<String> understood = new LinkedHashSet<>();

  /** What the text can mean, whether a part of the kit has it or not. */
  private final Set<String> meanings = new LinkedHashSet<>();

  private FoundSteps(Progress progress, String asked) {
    this.progress = progress;
    this.asked = asked;
  }

  /** The steps of the kit that fit what was asked; none when nothing does. */
  public static FoundScreen in(Progress progress, String asked) {
    var found = new FoundSteps(progress, asked.strip());
    if (!found.asked.isEmpty()) {
      found.byNumber();
      found.byDesignator();
      found.byMarking();
      if (found.steps.isEmpty()) {
        found.byWords();
      }
    }
    List<Hit> hits = found.steps.stream().map(step -> JobScreens.step(progress, step)).toList();
    return new FoundScreen(found.asked, found.words(), hits);
  }

  private String words() {
    if (!steps.isEmpty()) {
      return String.join("; ", understood);
    }
    return (meanings.isEmpty() ? "" : canMean(meanings) + ". ")
        + "No step of this kit fits. Check the marking under a lens, or type the designator that"
        + " stands on the board.";
  }

  private String canMean(Collection<String> amounts) {
    List<String> all = List.copyOf(amounts);
    int last = all.size() - 1;
    String before = String.join(", ", all.subList(0, last));
    return "\"" + asked + "\" can mean " + (last == 0 ? "" : before + " or ") + all.get(last);
  }

  private void byNumber() {
    Matcher matcher = STEP.matcher(asked);
    if (matcher.matches()) {
      progress
          .plan()
          .step(Integer.parseInt(matcher.group(1)))
          .ifPresent(step -> add(step, "step " + step.number()));
    }
  }

  private void byDesignator() {
    String bare = asked.replaceAll("(?i)\\s+on\\s+\\S+$", "").replaceAll("\\s+", "");
    for (Step step : progress.plan().steps()) {
      if (step.designators().stream().map(Designator::text).anyMatch(bare::equalsIgnoreCase)) {
        add(step, "designator " + bare.toUpperCase(Locale.ROOT));
      }
    }
  }

  private void byMarking() {
    var fitting = new LinkedHashSet<String>();
    for (Quantity value : values()) {
      meanings.add(value.toString());
      for (Step step : progress.plan().steps()) {
        if (step.partType().value().filter(value::sameAs).isPresent()) {
          steps.add(step);
          fitting.add(value.toString());
        }
      }
    }
    if (!fitting.isEmpty()) {
      understood.add(canMean(fitting));
    }
    String folded = asked.toLowerCase(Locale.ROOT);
    for (Step step : progress.plan().steps()) {
      String type = step.partType().typeNumber().toLowerCase(Locale.ROOT);
      String text = step.partType().text().toLowerCase(Locale.ROOT);
      // Small glass diodes leave out the 1N that their type number starts with.
      if (folded.equals(text)
          || !type.isEmpty() && (type.equals(folded) || type.equals("1n" + folded))) {
        add(step, "\"" + asked + "\" as printed on the part");
      }
    }
  }

  /** Every amount that the text can mean, as bands, as a print and as a written value. */
  private List<Quantity> values() {
    var values = new ArrayList<Quantity>();
    Optional<BandSequence> bands = BandSequence.parse(asked).value();
    bands.ifPresent(
        sequence ->
            ColourCode.decode(sequence).readings().forEach(reading -> values.add(reading.value())));
    PrintedCode.readings(asked).forEach(print -> print.value().ifPresent(values::add));
    WrittenValue.parse(asked, Optional.empty())
        .value()
        .ifPresent(written -> values.add(written.value()));
    return values.stream().distinct().toList();
  }

  private void byWords() {
    String folded = asked.toLowerCase(Locale.ROOT);
    progress.plan().steps().stream()
        .filter(
            step ->
                StepWording.shortName(step.partType()).toLowerCase(Locale.ROOT).contains(folded))
        .forEach(step -> add(step, "parts with \"" + asked + "\" in their name"));
  }

  private void add(Step step, String why) {
    steps.add(step);
    understood.add(why);
  }
}
