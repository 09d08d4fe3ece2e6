package lowfirst.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.lang.reflect.RecordComponent;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class PartTypeTest {
  private static final PartType ONE = of(0, 0, 0, 0, 0, 0, 0, 0);

  private static PartType of(int... variants) {
    return new PartType(
        variants[0] == 0 ? PartKind.RESISTOR : PartKind.CAPACITOR,
        "4k7" + variants[1],
        quantity(variants[2], "4.7k", Dimension.RESISTANCE),
        variants[3] == 0 ? Optional.of(Tolerance.percent("1")) : Optional.empty(),
        quantity(variants[4], "50V", Dimension.VOLTAGE),
        quantity(variants[5], "0.25W", Dimension.POWER),
        "type" + variants[6],
        "package" + variants[7]);
  }

  private static Optional<Quantity> quantity(int variant, String text, Dimension dimension) {
    return variant == 0 ? Quantity.parse(text, dimension).value() : Optional.empty();
  }

  @Test
  void the_same_in_every_field_is_the_same() {
    PartType again = of(0, 0, 0, 0, 0, 0, 0, 0);
    assertEquals(ONE, again);
    assertEquals(ONE.hashCode(), again.hashCode());
  }

  @TestFactory
  Stream<DynamicTest> another_field_makes_another_part_type() {
    RecordComponent[] fields = PartType.class.getRecordComponents();
    return IntStream.range(0, fields.length)
        .mapToObj(
            changed ->
                DynamicTest.dynamicTest(
                    fields[changed].getName(),
                    () -> {
                      var variants = new int[fields.length];
                      variants[changed] = 1;
                      assertNotEquals(ONE, of(variants));
                      assertNotEquals(of(variants), ONE);
                    }));
  }
}
