package lowfirst.sorting;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import lowfirst.marking.BandReading;
import lowfirst.marking.BandSequence;
import lowfirst.marking.Colour;
import lowfirst.marking.ColourCode;
import lowfirst.marking.ColourCode.Body;
import lowfirst.marking.Edition;
import lowfirst.sorting.Likeness.Circumstance;

/**
 * What a row of bands would be if one colour was taken for another.
 *
 * @param place which band, from 1
 * @param taken the colour that was read
 * @param meant the colour that it may be
 * @param reading what the part is then
 * @param circumstances who makes this mistake
 */
public record Misreading(
    int place, Colour taken, Colour meant, BandReading reading, Set<Circumstance> circumstances) {

  /** Every part that shops sell and that differs from these bands in one confused colour. */
  public static List<Misreading> of(BandSequence bands, Body body, Edition edition) {
    var found = new ArrayList<Misreading>();
    for (int i = 0; i < bands.count(); i++) {
      Colour taken = bands.bands().get(i);
      for (Colour meant : Colour.values()) {
        Set<Circumstance> circumstances = ConfusedColours.of(taken, meant);
        if (!circumstances.isEmpty()) {
          var changed = new ArrayList<>(bands.bands());
          changed.set(i, meant);
          int place = i + 1;
          ColourCode.decodeFromStart(new BandSequence(changed), body, edition).readings().stream()
              .filter(BandReading::isPlausible)
              .findFirst()
              .ifPresent(
                  reading ->
                      found.add(new Misreading(place, taken, meant, reading, circumstances)));
        }
      }
    }
    return List.copyOf(found);
  }
}
