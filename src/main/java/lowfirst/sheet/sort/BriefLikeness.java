package lowfirst.sheet.sort;

import lowfirst.part.PartType;
import lowfirst.sheet.wording.StepWording;
import lowfirst.sorting.Compartment;
import lowfirst.sorting.Likeness;
import lowfirst.sorting.LookAlike;
import lowfirst.sorting.Separation;

/** A look-alike in one breath, for the hand that is about to take the part. */
public final class BriefLikeness implements Likeness.Cases<String> {
  private static final BriefLikeness WORDS = new BriefLikeness();

  private BriefLikeness() {}

  /** What not to take for the part of compartment {@code here}, and how to tell. */
  public static String of(LookAlike alike, int here) {
    Compartment other = alike.one().number() == here ? alike.other() : alike.one();
    return "not the "
        + name(other.type(), (alike.one().number() == here ? alike.one() : alike.other()).type())
        + ": "
        + alike.likeness().fold(WORDS)
        + ". "
        + test(alike);
  }

  /** In two words, unless the part in the hand goes by the same. */
  private static String name(PartType other, PartType inHand) {
    String name = StepWording.shortName(other);
    return name.equals(StepWording.shortName(inHand)) ? StepWording.name(other) : name;
  }

  private static String test(LookAlike alike) {
    Separation.Test test = alike.separation().test();
    if (test == Separation.Test.OHMS || test == Separation.Test.FARADS) {
      return "Measure it.";
    }
    String words = LikenessWords.test(alike);
    return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1) + ".";
  }

  @Override
  public String reversed(Likeness.Reversed reversed) {
    return "that is what the bands say from the other end";
  }

  @Override
  public String alikeBands(Likeness.AlikeBands alike) {
    return alike.places().stream()
        .map(
            place ->
                alike.one().bands().get(place - 1).word()
                    + " or "
                    + alike.other().bands().get(place - 1).word()
                    + " in band "
                    + place)
        .collect(java.util.stream.Collectors.joining(", "));
  }

  @Override
  public String sameText(Likeness.SameText same) {
    return "the same print";
  }

  @Override
  public String codeAsNumber(Likeness.CodeAsNumber code) {
    return "the print is a digit code for one and a number for the other";
  }

  @Override
  public String sameValue(Likeness.SameValue same) {
    return "the same value, another rating";
  }

  @Override
  public String sameBody(Likeness.SameBody body) {
    return "the same body, another print";
  }
}
