package lowfirst.intake.kind;

import java.util.Optional;
import lowfirst.board.Item;
import lowfirst.part.Datasheets;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;

/**
 * What the kit's own datasheet rows say of the kind of a part, of which the BOM may give no more
 * than the type number.
 *
 * @param own the kit's own rows
 */
public record StatedKinds(Datasheets own) {
  /** The line with the kind that a row states for its part; else as it is. */
  public Item of(Item item) {
    PartType type = item.partType();
    String key = type.name();
    Optional<PartKind> stated =
        own.about(key, "kind").stream()
            .flatMap(line -> PartKindWords.byWords(line.condition()).stream())
            .findFirst();
    // a resistor's value has been read by then, or not as one
    if (stated.isEmpty() || stated.get().measures().isPresent()) {
      return item;
    }
    var guess = new PartKindGuess();
    guess.vote(Optional.of(type.kind()), PartKindGuess.WEAKEST);
    guess.vote(stated, PartKindGuess.SUREST);
    return item.with(type.with(guess.kind()));
  }
}
