package lowfirst.part;

import java.util.Optional;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;

/**
 * One line of a datasheet table.
 *
 * @param partType the type number it is about, as written
 * @param maker the maker it is about; empty when not stated
 * @param symbol the IEC 60747 letter symbol in plain text: {@code VDS}, {@code RDSon}, {@code QGD}
 * @param condition the test condition as written, for example {@code VGS=10V, ID=25A, TJ=25C}
 * @param min the guaranteed minimum
 * @param typ the typical value: shown, never used to pass
 * @param max the guaranteed maximum
 * @param source maker, document, revision; or from memory
 */
public record DatasheetLine(
    String partType,
    String maker,
    String symbol,
    String condition,
    Optional<Quantity> min,
    Optional<Quantity> typ,
    Optional<Quantity> max,
    Source source) {}
