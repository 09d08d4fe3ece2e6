package lowfirst.intake.design;

import java.util.HashMap;
import java.util.Optional;
import java.util.OptionalDouble;
import lowfirst.board.BoardPart;
import lowfirst.board.BodyFinder;
import lowfirst.board.Designator;
import lowfirst.intake.cell.DesignatorList;
import lowfirst.intake.design.DesignData.Component;
import lowfirst.intake.xml.XmlNumber;
import lowfirst.part.BodyOutline;
import lowfirst.part.PartKind;
import lowfirst.part.SurfaceMount;
import lowfirst.quantity.Source;

/**
 * What an IPC-2581 file's packages tell of bodies: how large from above, how tall, how far apart
 * the leads. It wins over what a package's name tells, and the BOM's own height over both.
 */
final class DesignBodies {
  /** Nothing on a board is taller or wider. */
  private static final double LARGEST_MILLIMETRES = 500;

  private final String file;
  private final DesignData.Step step;
  private final double scale;

  /**
   * The bodies of a step.
   *
   * @param scale how many millimetres the file's unit is long
   */
  DesignBodies(String file, DesignData.Step step, double scale) {
    this.file = file;
    this.step = step;
    this.scale = scale;
  }

  /** Whether a component is soldered flat: its pins say so, or, where they don't, it itself. */
  static boolean isSurfaceMount(Component component, DesignData.PartPackage body) {
    if (body != null && body.through + body.surface > 0) {
      return body.through == 0;
    }
    return component.mountType().equals("SMT");
  }

  /** How far the body's middle lies from the package's own origin, seen from above. */
  double[] middle(Component component, boolean bottom, double rotationDegrees) {
    DesignData.PartPackage body = step.packages.get(component.packageName());
    if (body == null || body.body().isEmpty()) {
      return new double[] {0, 0};
    }
    // On the bottom side the body is turned over about the y axis, then turned.
    double x = body.body().middleX() * scale * (bottom ? -1 : 1);
    double y = body.body().middleY() * scale;
    double angle = Math.toRadians(rotationDegrees);
    return new double[] {
      x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle)
    };
  }

  /** What finds outlines by name, with what the file knows better. */
  BodyFinder over(BodyFinder found) {
    var leaded = new HashMap<Designator, Component>();
    for (Component component : step.components) {
      boolean flat =
          isSurfaceMount(component, step.packages.get(component.packageName()))
              || SurfaceMount.isNamed(component.packageName(), PartKind.UNKNOWN);
      if (!component.name().isBlank() && !flat) {
        leaded.put(Designator.of(DesignatorList.spelt(component.name())), component);
      }
    }
    return part -> {
      Optional<BodyOutline> before = found.of(part);
      Component component = leaded.get(part.designator());
      return component == null ? before : Optional.ofNullable(known(component, part, before));
    };
  }

  private BodyOutline known(Component component, BoardPart part, Optional<BodyOutline> byName) {
    BodyOutline before = byName.orElse(null);
    DesignData.PartPackage body = step.packages.get(component.packageName());
    boolean ownHeight =
        part.items().stream().anyMatch(item -> item.heightMillimetres().isPresent());
    OptionalDouble height = height(component, body);
    boolean drawn = body != null && isBelievable(body.body());
    int pins = body == null ? 0 : body.through + body.surface + body.unstated;
    if (height.isEmpty() && !drawn && pins == 0) {
      return before;
    }
    boolean keeps = before != null && (ownHeight || height.isEmpty());
    double tall = keeps ? before.seatedHeightMillimetres() : height.orElse(0);
    OptionalDouble standOff = length(component.standOff());
    double gap = standOff.orElse(before == null ? 0 : before.standOffMillimetres());
    boolean few = pins == 2 || pins == 3;
    double pitch =
        few && !body.pins.isEmpty()
            ? Math.hypot(body.pins.width(), body.pins.height()) * scale
            : before == null ? 0 : before.pitchMillimetres();
    return new BodyOutline(
        component.packageName(),
        tall,
        Math.min(gap, tall),
        drawn ? body.body().width() * scale : before == null ? 0 : before.lengthMillimetres(),
        drawn ? body.body().height() * scale : before == null ? 0 : before.widthMillimetres(),
        pitch,
        pins > 0 ? pins : before == null ? 0 : before.pins(),
        keeps ? before.source() : Source.kit(file + ", height of the package or component"));
  }

  private boolean isBelievable(Extent body) {
    double largest = Math.max(body.width(), body.height()) * scale;
    return !body.isEmpty() && largest < LARGEST_MILLIMETRES;
  }

  /** The component's own height, else its package's; a height of 0 is none. */
  OptionalDouble height(Component component, DesignData.PartPackage body) {
    OptionalDouble own = length(component.height());
    return own.isPresent() || body == null ? own : length(body.height);
  }

  private OptionalDouble length(String text) {
    OptionalDouble number = XmlNumber.in(text);
    double millimetres = number.orElse(0) * scale;
    return millimetres > 0 && millimetres < LARGEST_MILLIMETRES
        ? OptionalDouble.of(millimetres)
        : OptionalDouble.empty();
  }
}
