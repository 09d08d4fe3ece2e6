package lowfirst.intake.design;

/** The upright rectangle around points that are met one by one. */
final class Extent {
  private double left = Double.MAX_VALUE;
  private double bottom = Double.MAX_VALUE;
  private double right = -Double.MAX_VALUE;
  private double top = -Double.MAX_VALUE;
  private boolean slanted;
  private double lastX;
  private double lastY;

  /** Starts a figure here. */
  void begin(double x, double y) {
    add(x, y);
  }

  /** A straight edge from where the last one ended. */
  void line(double x, double y) {
    slanted |= x != lastX && y != lastY;
    add(x, y);
  }

  /** An arc about a centre, from where the last edge ended. */
  void arc(double x, double y, double centreX, double centreY, boolean clockwise) {
    double radius = Math.hypot(x - centreX, y - centreY);
    double from = Math.atan2(lastY - centreY, lastX - centreX);
    double to = Math.atan2(y - centreY, x - centreX);
    double sweep = clockwise ? from - to : to - from;
    sweep = sweep <= 1e-9 ? sweep + 2 * Math.PI : sweep;
    // It reaches furthest where it crosses a quarter turn.
    for (int quarter = -4; quarter <= 4; quarter++) {
      double angle = quarter * Math.PI / 2;
      double on = clockwise ? from - angle : angle - from;
      on = (on % (2 * Math.PI) + 2 * Math.PI) % (2 * Math.PI);
      if (on <= sweep) {
        add(centreX + radius * Math.cos(angle), centreY + radius * Math.sin(angle));
      }
    }
    slanted = true;
    add(x, y);
  }

  /** Widens it to another, unless that is empty of points. */
  void include(Extent other) {
    if (other.left <= other.right) {
      add(other.left, other.bottom);
      add(other.right, other.top);
    }
  }

  private void add(double x, double y) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    bottom = Math.min(bottom, y);
    top = Math.max(top, y);
    lastX = x;
    lastY = y;
  }

  /** Whether no point was met, or just one. */
  boolean isEmpty() {
    return !(width() > 0) && !(height() > 0);
  }

  /** Whether some edge is an arc or runs aslant, so that the rectangle is more than the figure. */
  boolean isSlanted() {
    return slanted;
  }

  double left() {
    return left;
  }

  double bottom() {
    return bottom;
  }

  double width() {
    return right - left;
  }

  double height() {
    return top - bottom;
  }

  double middleX() {
    return (left + right) / 2;
  }

  double middleY() {
    return (bottom + top) / 2;
  }
}
