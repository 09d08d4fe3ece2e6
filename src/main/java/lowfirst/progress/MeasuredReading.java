package lowfirst.progress;

import java.util.Optional;
import lowfirst.marking.WrittenValue;
import lowfirst.problem.Reading;
import lowfirst.quantity.Quantity;
import lowfirst.sorting.MeterLimits;

/**
 * A meter reading as a person typed it, judged against the limits of the part in the hand.
 *
 * @param value what was understood
 * @param judgement what it says about the part
 */
public record MeasuredReading(Quantity value, MeterLimits.Judgement judgement) {

  /** Reads and judges; a fault when the text is no amount of what the part is measured in. */
  public static Reading<MeasuredReading> parse(String typed, MeterLimits limits) {
    Reading<WrittenValue> written =
        WrittenValue.parse(typed, Optional.of(limits.nominal().dimension()));
    Optional<Quantity> value =
        written
            .value()
            .map(WrittenValue::value)
            .filter(amount -> amount.dimension() == limits.nominal().dimension());
    return value
        .map(amount -> Reading.of(new MeasuredReading(amount, limits.judge(amount)), "reading"))
        .orElseGet(
            () ->
                Reading.fault(
                    "\"" + typed.strip() + "\" is no reading",
                    "type it as the meter shows it, such as " + limits.nominal()));
  }
}
