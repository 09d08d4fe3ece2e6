package lowfirst.sorting;

import java.util.List;
import java.util.Set;
import lowfirst.marking.BandSequence;

/** Why two part types can be mistaken for one another. Closed; handled by {@link #fold}. */
public sealed interface Likeness {

  /** Calls the one method of {@code cases} that fits. */
  <R> R fold(Cases<R> cases);

  /** One method a kind of likeness. */
  interface Cases<R> {
    R reversed(Reversed reversed);

    R alikeBands(AlikeBands alikeBands);

    R sameText(SameText sameText);

    R codeAsNumber(CodeAsNumber codeAsNumber);

    R sameValue(SameValue sameValue);

    R sameBody(SameBody sameBody);
  }

  /** Who may take one colour for the other, or in which light. */
  enum Circumstance {
    /** Anybody, in poor light or on a dirty or overheated part. */
    POOR_LIGHT,
    PROTANOPIA,
    DEUTERANOPIA,
    TRITANOPIA
  }

  /**
   * The bands of one, read from the other end, are those of the other.
   *
   * @param bands those of the first part type
   */
  record Reversed(BandSequence bands) implements Likeness {
    @Override
    public <R> R fold(Cases<R> cases) {
      return cases.reversed(this);
    }
  }

  /**
   * The bands differ only in colours that look alike.
   *
   * @param one bands of the first part type
   * @param other bands of the second
   * @param places which bands differ, from 1
   * @param circumstances who takes all of them for each other
   */
  record AlikeBands(
      BandSequence one, BandSequence other, List<Integer> places, Set<Circumstance> circumstances)
      implements Likeness {
    @Override
    public <R> R fold(Cases<R> cases) {
      return cases.alikeBands(this);
    }
  }

  /** The same print on different kinds of part. */
  record SameText(String text) implements Likeness {
    @Override
    public <R> R fold(Cases<R> cases) {
      return cases.sameText(this);
    }
  }

  /**
   * The digit code of one, read as a number, is the value of the other: {@code 100} is 10 pF.
   *
   * @param text the print
   */
  record CodeAsNumber(String text) implements Likeness {
    @Override
    public <R> R fold(Cases<R> cases) {
      return cases.codeAsNumber(this);
    }
  }

  /** The same value; they differ in a rating only. */
  record SameValue() implements Likeness {
    @Override
    public <R> R fold(Cases<R> cases) {
      return cases.sameValue(this);
    }
  }

  /**
   * The same body with other type numbers, and perhaps another order of pins.
   *
   * @param body what the body is called
   */
  record SameBody(String body) implements Likeness {
    @Override
    public <R> R fold(Cases<R> cases) {
      return cases.sameBody(this);
    }
  }
}
