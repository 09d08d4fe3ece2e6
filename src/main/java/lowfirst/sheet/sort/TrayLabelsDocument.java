package lowfirst.sheet.sort;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sheet.drawing.Shape;
import lowfirst.sorting.SortLine;
import lowfirst.sorting.SortPlan;

/** Labels to cut out, one for each compartment of the sorting tray. */
public final class TrayLabelsDocument {
  /** Left free for the title on the first page. */
  private static final double TITLE_MILLIMETRES = 30;

  /** Left free below the labels: writers keep some room for a caption. */
  private static final double FOOT_MILLIMETRES = 26;

  private TrayLabelsDocument() {}

  /**
   * The size of a compartment.
   *
   * @param widthMillimetres 15 or more
   * @param heightMillimetres 10 or more
   */
  public record Compartment(double widthMillimetres, double heightMillimetres) {
    /** A cell of a flat sorting box. */
    public static final Compartment USUAL = new Compartment(45, 30);

    public Compartment {
      if (!(widthMillimetres >= 15 && heightMillimetres >= 10)
          || !(widthMillimetres <= 150 && heightMillimetres <= 150)) {
        throw new IllegalArgumentException(
            "no compartment: " + widthMillimetres + " by " + heightMillimetres + " mm");
      }
    }
  }

  /**
   * The labels.
   *
   * @param widthMillimetres of the paper between its margins
   * @param heightMillimetres of the paper between its margins
   */
  public static Document of(
      String title,
      SortPlan plan,
      Compartment size,
      double widthMillimetres,
      double heightMillimetres) {
    int across = Math.max(1, (int) (widthMillimetres / size.widthMillimetres()));
    double room = heightMillimetres - FOOT_MILLIMETRES;
    int rows = Math.max(1, (int) (room / size.heightMillimetres()));
    int rowsFirst = Math.max(1, (int) ((room - TITLE_MILLIMETRES) / size.heightMillimetres()));
    var blocks = new ArrayList<Block>();
    blocks.add(
        new Block.Paragraph(
            "Print at 100 % and cut along the lines. The number is the part's line on the sort"
                + " sheet; the count is for all units together. Parts are drawn life size where"
                + " the label has room."));
    List<SortLine> lines = plan.lines();
    int at = 0;
    while (at < lines.size()) {
      int fit = across * (at == 0 ? rowsFirst : rows);
      List<SortLine> page = lines.subList(at, Math.min(lines.size(), at + fit));
      blocks.add(new Block.Figure(grid(page, size, across), ""));
      at += fit;
    }
    return new Document("Tray labels", title, blocks);
  }

  private static Drawing grid(List<SortLine> lines, Compartment size, int across) {
    var shapes = new ArrayList<Shape>();
    for (int at = 0; at < lines.size(); at++) {
      double x = at % across * size.widthMillimetres();
      int down = at / across;
      double y = down * size.heightMillimetres();
      shapes.addAll(
          TrayLabel.of(lines.get(at), size.widthMillimetres(), size.heightMillimetres())
              .movedTo(x, y)
              .shapes());
    }
    int rows = (lines.size() + across - 1) / across;
    return new Drawing(
        Math.min(across, lines.size()) * size.widthMillimetres(),
        rows * size.heightMillimetres(),
        shapes,
        lines.stream()
            .map(line -> line.compartment().number() + " " + TrayLabel.name(line.compartment()))
            .collect(Collectors.joining("; ", "labels: ", "")));
  }
}
