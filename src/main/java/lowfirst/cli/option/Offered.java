package lowfirst.cli.option;

import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;
import lowfirst.progress.State;

/** The words that a shell offers after an option that takes one of a few. */
public final class Offered {
  private Offered() {}

  /** After {@code --as}. */
  public static final class Carriers implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return List.of("resistor", "capacitor", "inductor", "network").iterator();
    }
  }

  /** After {@code --edition}. */
  public static final class Editions implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return List.of("2016", "older").iterator();
    }
  }

  /** After {@code --paper}. */
  public static final class Papers implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return List.of("a4", "letter").iterator();
    }
  }

  /** After {@code --state}. */
  public static final class States implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return Stream.of(State.values()).map(state -> state.words().replace(' ', '-')).iterator();
    }
  }
}
