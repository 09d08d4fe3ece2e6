package lowfirst.sorting;

/**
 * How different two colours look: CIEDE2000 (ISO/CIE 11664-6), after G. Sharma, W. Wu, E. N. Dalal,
 * Color Research and Application 30(1), 21-30, 2005. About 1 is just seen side by side.
 */
final class ColourDifference {
  private static final double POW_25_7 = Math.pow(25, 7);

  /** Reference white D65, 2° (IEC 61966-2-1). */
  private static final double[] WHITE = {0.95047, 1.0, 1.08883};

  private ColourDifference() {}

  /** A colour as CIE 1976 L*, a*, b*. */
  record Lab(double lightness, double a, double b) {

    /** From sRGB 0xRRGGBB, by IEC 61966-2-1 and ISO/CIE 11664-4. */
    static Lab of(int rgb) {
      double red = ColourVision.linear(rgb >> 16 & 0xFF);
      double green = ColourVision.linear(rgb >> 8 & 0xFF);
      double blue = ColourVision.linear(rgb & 0xFF);
      double x = f((0.4124564 * red + 0.3575761 * green + 0.1804375 * blue) / WHITE[0]);
      double y = f((0.2126729 * red + 0.7151522 * green + 0.0721750 * blue) / WHITE[1]);
      double z = f((0.0193339 * red + 0.1191920 * green + 0.9503041 * blue) / WHITE[2]);
      return new Lab(116 * y - 16, 500 * (x - y), 200 * (y - z));
    }

    private static double f(double t) {
      double delta = 6.0 / 29;
      return t > delta * delta * delta ? Math.cbrt(t) : t / (3 * delta * delta) + 4.0 / 29;
    }
  }

  /** The formula of CIEDE2000 with all parametric factors 1. */
  static double ciede2000(Lab first, Lab second) {
    double meanChroma = (Math.hypot(first.a(), first.b()) + Math.hypot(second.a(), second.b())) / 2;
    double g = (1 - Math.sqrt(seventh(meanChroma))) / 2;
    double a1 = (1 + g) * first.a();
    double a2 = (1 + g) * second.a();
    double c1 = Math.hypot(a1, first.b());
    double c2 = Math.hypot(a2, second.b());
    double h1 = hue(a1, first.b());
    double h2 = hue(a2, second.b());
    double lightnessDifference = second.lightness() - first.lightness();
    double chromaDifference = c2 - c1;
    // Grey has no hue; its chroma of 0 takes whatever stands for it out of the sum.
    double hueDifference = 2 * Math.sqrt(c1 * c2) * Math.sin(Math.toRadians(turn(h2 - h1) / 2));

    double lightness = (first.lightness() + second.lightness()) / 2;
    double chroma = (c1 + c2) / 2;
    double hue = meanHue(h1, h2);
    double t =
        1
            - 0.17 * Math.cos(Math.toRadians(hue - 30))
            + 0.24 * Math.cos(Math.toRadians(2 * hue))
            + 0.32 * Math.cos(Math.toRadians(3 * hue + 6))
            - 0.20 * Math.cos(Math.toRadians(4 * hue - 63));
    double fromMiddle = (lightness - 50) * (lightness - 50);
    double sl = 1 + 0.015 * fromMiddle / Math.sqrt(20 + fromMiddle);
    double sc = 1 + 0.045 * chroma;
    double sh = 1 + 0.015 * chroma * t;
    double rotation = 30 * Math.exp(-Math.pow((hue - 275) / 25, 2));
    double rt = -2 * Math.sqrt(seventh(chroma)) * Math.sin(Math.toRadians(2 * rotation));
    double l = lightnessDifference / sl;
    double c = chromaDifference / sc;
    double h = hueDifference / sh;
    return Math.sqrt(l * l + c * c + h * h + rt * c * h);
  }

  private static double seventh(double chroma) {
    double power = Math.pow(chroma, 7);
    return power / (power + POW_25_7);
  }

  private static double hue(double a, double b) {
    if (a == 0 && b == 0) {
      return 0;
    }
    double degrees = Math.toDegrees(Math.atan2(b, a));
    return degrees < 0 ? degrees + 360 : degrees;
  }

  private static double turn(double difference) {
    return difference > 180 ? difference - 360 : difference < -180 ? difference + 360 : difference;
  }

  private static double meanHue(double h1, double h2) {
    double sum = h1 + h2;
    if (Math.abs(h1 - h2) <= 180) {
      return sum / 2;
    }
    return (sum < 360 ? sum + 360 : sum - 360) / 2;
  }
}
