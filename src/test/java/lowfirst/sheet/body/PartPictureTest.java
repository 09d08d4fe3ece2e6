package lowfirst.sheet.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sheet.drawing.Shape;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PartPictureTest {

  @Test
  void each_band_stands_beside_its_two_letter_code_in_reading_order() {
    Drawing drawing =
        PartPicture.of(type(PartKind.RESISTOR, "4700", Dimension.RESISTANCE), Optional.empty());
    assertEquals(List.of("YE", "VT", "RD", "GD"), labels(drawing));
    assertTrue(drawing.words().contains("yellow violet red gold"), drawing.words());
  }

  @Test
  void a_quarter_watt_body_is_drawn_life_size() {
    Drawing drawing =
        PartPicture.of(type(PartKind.RESISTOR, "4700", Dimension.RESISTANCE), Optional.empty());
    Shape.Box body =
        drawing.shapes().stream()
            .filter(Shape.Box.class::isInstance)
            .map(Shape.Box.class::cast)
            .findFirst()
            .orElseThrow();
    assertEquals(6.3, body.width(), 1e-9);
    assertEquals(2.4, body.height(), 1e-9);
  }

  @Test
  void an_aluminium_can_is_marked_at_the_negative_and_a_tantalum_drop_at_the_positive_lead() {
    String can =
        PartPicture.of(
                type(PartKind.ELECTROLYTIC_CAPACITOR, "10E-6", Dimension.CAPACITANCE),
                Optional.empty())
            .words();
    String drop =
        PartPicture.of(
                type(PartKind.TANTALUM_CAPACITOR, "10E-6", Dimension.CAPACITANCE), Optional.empty())
            .words();
    assertTrue(can.contains("stripe is at the negative"), can);
    assertTrue(drop.contains("+ is at the positive"), drop);
  }

  @Test
  void an_amplifier_with_a_tab_is_drawn_with_its_tab_and_all_its_leads() {
    Drawing drawing =
        PartPicture.of(
            PartType.named(PartKind.INTEGRATED_CIRCUIT, "XY2030", "XY2030", "TO-220-5_Vertical"),
            Optional.empty());
    assertTrue(drawing.words().contains("TO-220 body seen from its front"), drawing.words());
    assertTrue(labels(drawing).containsAll(List.of("1", "2", "3", "4", "5")), drawing.words());
  }

  @Test
  void a_voltage_counts_no_poles() {
    Drawing drawing =
        PartPicture.of(
            PartType.named(PartKind.SCREW_TERMINAL, "12V AC", "", "Terminal_2_P5.08mm"),
            Optional.empty());
    assertTrue(drawing.words().contains("with 2 poles"), drawing.words());
  }

  /** Text is wider than high: at half its size a letter may not begin left of the picture. */
  @Test
  void a_long_number_beside_a_small_glass_body_stays_on_its_picture() {
    Drawing drawing =
        PartPicture.of(
            PartType.named(PartKind.ZENER_DIODE, "BZX55C5V1", "BZX55C5V1", "DO-35"),
            Optional.empty());
    Shape.Label number =
        drawing.shapes().stream()
            .filter(Shape.Label.class::isInstance)
            .map(Shape.Label.class::cast)
            .filter(label -> label.text().equals("BZX55C5V1"))
            .findFirst()
            .orElseThrow();
    assertTrue(number.x() - number.size() * 0.5 * 9 / 2 >= 0, number.toString());
  }

  @ParameterizedTest
  @EnumSource(PartKind.class)
  void every_kind_has_a_picture_with_words_and_all_shapes_inside(PartKind kind) {
    Drawing drawing =
        PartPicture.of(PartType.named(kind, "ABC123", "ABC123", ""), Optional.empty());
    assertFalse(drawing.shapes().isEmpty());
    assertFalse(drawing.words().isBlank());
    for (Shape shape : drawing.shapes()) {
      assertTrue(shape.fold(new Inside(drawing)), () -> kind + ": outside: " + shape);
    }
  }

  /** Whether a shape lies inside its drawing. */
  private record Inside(Drawing drawing) implements Shape.Pen<Boolean> {
    private boolean holds(double x, double y) {
      return x >= -0.01
          && y >= -0.01
          && x <= drawing.widthMillimetres() + 0.01
          && y <= drawing.heightMillimetres() + 0.01;
    }

    @Override
    public Boolean line(Shape.Line line) {
      return holds(line.x1(), line.y1()) && holds(line.x2(), line.y2());
    }

    @Override
    public Boolean box(Shape.Box box) {
      return holds(box.x(), box.y()) && holds(box.x() + box.width(), box.y() + box.height());
    }

    @Override
    public Boolean circle(Shape.Circle circle) {
      return holds(circle.x(), circle.y() - circle.radius())
          && holds(circle.x(), circle.y() + circle.radius());
    }

    @Override
    public Boolean path(Shape.Path path) {
      return path.points().stream().allMatch(point -> holds(point.x(), point.y()));
    }

    @Override
    public Boolean label(Shape.Label label) {
      double half = 0.3 * label.size() * label.text().length();
      return holds(label.x() - half, label.y() - 0.7 * label.size())
          && holds(label.x() + half, label.y());
    }

    @Override
    public Boolean stamp(Shape.Stamp stamp) {
      return stamp.drawing().flat().shapes().stream().allMatch(shape -> shape.fold(this));
    }
  }

  private static PartType type(PartKind kind, String amount, Dimension dimension) {
    return new PartType(
        kind,
        "",
        Optional.of(Quantity.of(amount, dimension)),
        Optional.of(Tolerance.percent("5")),
        Optional.empty(),
        Optional.empty(),
        "",
        "");
  }

  private static List<String> labels(Drawing drawing) {
    return drawing.shapes().stream()
        .filter(Shape.Label.class::isInstance)
        .map(shape -> ((Shape.Label) shape).text())
        .toList();
  }
}
