package lowfirst.channel;

import lowfirst.channel.formula.PrintedTrack;

/** The published curves of tracks the other way round: the width that a current asks for. */
final class TrackWidths {
  private TrackWidths() {}

  /** By the formula of IPC-2221, in millimetres. */
  static double millimetres(double amperes, double riseKelvin, double copper, boolean external) {
    PrintedTrack.Fit fit = external ? PrintedTrack.EXTERNAL : PrintedTrack.INTERNAL;
    return millimetres(fit, amperes, riseKelvin, copper);
  }

  /** The same by the other fit of the chart. */
  static double otherMillimetres(
      double amperes, double riseKelvin, double copper, boolean external) {
    PrintedTrack.Fit fit = external ? PrintedTrack.OTHER_EXTERNAL : PrintedTrack.OTHER_INTERNAL;
    return millimetres(fit, amperes, riseKelvin, copper);
  }

  /** From I = k·ΔT^b·A^c. */
  private static double millimetres(
      PrintedTrack.Fit fit, double amperes, double riseKelvin, double copper) {
    double squareMils = Math.pow(amperes / fit.amperes(riseKelvin, 1), 1 / fit.c());
    return squareMils * 0.0254 * 0.0254 / copper;
  }
}
