package lowfirst.sheet.pdf;

/** How wide each column of a table becomes. */
final class ColumnWidths {
  private static final int HALVINGS = 50;

  private ColumnWidths() {}

  /**
   * Shares out a width by weight, but gives no column less than its least width and, while another
   * is short, none more than its natural one. What nobody needs is shared out by weight.
   *
   * @param least what each column can't do without
   * @param natural what each column would take on its own, no less than its least
   * @param weight the share of each, positive
   * @param width what there is
   */
  static double[] of(double[] least, double[] natural, double[] weight, double width) {
    if (sum(least) >= width) {
      return scaled(least, width / sum(least));
    }
    if (sum(natural) <= width) {
      double spare = (width - sum(natural)) / sum(weight);
      double[] widths = natural.clone();
      for (int column = 0; column < widths.length; column++) {
        widths[column] += spare * weight[column];
      }
      return widths;
    }
    double low = 0;
    double high = width / smallest(weight);
    for (int halving = 0; halving < HALVINGS; halving++) {
      double middle = (low + high) / 2;
      if (sum(between(least, natural, weight, middle)) > width) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return between(least, natural, weight, low);
  }

  private static double[] between(double[] least, double[] natural, double[] weight, double unit) {
    var widths = new double[weight.length];
    for (int column = 0; column < widths.length; column++) {
      double wanted = unit * weight[column];
      widths[column] = Math.max(least[column], Math.min(natural[column], wanted));
    }
    return widths;
  }

  private static double[] scaled(double[] widths, double factor) {
    var scaled = widths.clone();
    for (int column = 0; column < scaled.length; column++) {
      scaled[column] *= factor;
    }
    return scaled;
  }

  private static double sum(double[] widths) {
    double sum = 0;
    for (double width : widths) {
      sum += width;
    }
    return sum;
  }

  private static double smallest(double[] weights) {
    double smallest = weights[0];
    for (double weight : weights) {
      smallest = Math.min(smallest, weight);
    }
    return smallest;
  }
}
