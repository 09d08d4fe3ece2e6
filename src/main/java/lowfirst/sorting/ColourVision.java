package lowfirst.sorting;

/**
 * How a colour looks to people of normal and of deficient colour vision.
 *
 * <p>Model: G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, "A Physiologically-based Model for
 * Simulation of Color Vision Deficiency", IEEE Trans. Visualization and Computer Graphics 15(6),
 * 1291-1298, 2009: matrices at severity 1.0, applied to linear RGB of sRGB primaries (IEC
 * 61966-2-1).
 */
enum ColourVision {
  NORMAL(1, 0, 0, 0, 1, 0, 0, 0, 1),
  /** Red cones missing: about 1 in 100 men. */
  PROTANOPIA(
      0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998),
  /** Green cones missing: the commonest, with its milder form about 6 in 100 men. */
  DEUTERANOPIA(
      0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881),
  /** Blue cones missing: rare. */
  TRITANOPIA(
      1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900);

  private final double[] matrix;

  ColourVision(double... matrix) {
    this.matrix = matrix;
  }

  /** The colour 0xRRGGBB that a person of normal vision would have to see to see the same. */
  int seen(int rgb) {
    double[] linear = new double[3];
    for (int i = 0; i < 3; i++) {
      linear[i] = linear(rgb >> (16 - 8 * i) & 0xFF);
    }
    int seen = 0;
    for (int row = 0; row < 3; row++) {
      double sum = 0;
      for (int column = 0; column < 3; column++) {
        sum += matrix[3 * row + column] * linear[column];
      }
      seen = seen << 8 | encoded(sum);
    }
    return seen;
  }

  /** IEC 61966-2-1: from the coded value, 0 to 255, to linear light, 0 to 1. */
  static double linear(int coded) {
    double value = coded / 255.0;
    return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
  }

  private static int encoded(double linear) {
    double clipped = Math.max(0, Math.min(1, linear));
    double value =
        clipped <= 0.0031308 ? 12.92 * clipped : 1.055 * Math.pow(clipped, 1 / 2.4) - 0.055;
    return (int) Math.round(255 * value);
  }
}
