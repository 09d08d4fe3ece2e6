package lowfirst.sheet.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sheet.pdf.Piece.Joint;

/** The blocks of a document as pieces. */
final class BlockPieces implements Block.Writer<List<Piece>> {
  private static final double LEFT = Paper.MARGIN_MILLIMETRES * Paper.POINTS;

  /** What takes no more of a page stays together at the end of a document: signatures. */
  private static final double LAST_SHARE = 0.25;

  /** Kept free below a figure as high as the page: a heading above it, a caption below it. */
  private static final double CAPTION_ROOM = 70;

  private final OpenDocument document;
  private final double width;
  private final double height;
  private int deepestHeading = 1;

  BlockPieces(OpenDocument document) {
    this.document = document;
    this.width = document.paper().bodyWidthMillimetres() * Paper.POINTS;
    this.height = document.paper().bodyHeightMillimetres() * Paper.POINTS;
  }

  /** All pieces of a document, the title first. */
  List<Piece> of(Document text) {
    var pieces = new ArrayList<Piece>();
    pieces.addAll(
        lines(text.title(), new Type(document.bold(), Style.TITLE, Style.INK, width), "H1", 0));
    if (!text.subtitle().isBlank()) {
      pieces.addAll(
          lines(
              text.subtitle(),
              new Type(document.regular(), Style.TEXT, Style.SOFT, width),
              "P",
              1));
    }
    pieces.add(rule());
    List<Block> blocks = text.toRead();
    for (int at = 0; at < blocks.size(); at++) {
      List<Piece> block = blocks.get(at).fold(this);
      boolean isLine = block.size() == 1;
      boolean isShort = block.stream().mapToDouble(Piece::height).sum() <= LAST_SHARE * height;
      if (at + 1 == blocks.size() && isShort && !block.isEmpty()) {
        block.subList(0, block.size() - 1).replaceAll(piece -> piece.joined(Joint.STAYS_WITH_NEXT));
      }
      if (at + 1 < blocks.size()
          && (introduces(blocks, at) || isLine && standsBelowItsHeading(blocks, at))) {
        block.set(block.size() - 1, block.get(block.size() - 1).joined(Joint.STAYS_WITH_NEXT));
      }
      pieces.addAll(block);
    }
    return pieces;
  }

  /**
   * Whether a block belongs to the one right below it: text about a table, figure or facts, a
   * picture of what the facts tell or of the places that a table lists, facts with the caution or
   * picture about them, a table or facts with what is to be done when that is done.
   */
  private static boolean introduces(List<Block> blocks, int at) {
    Block block = blocks.get(at);
    Block next = blocks.get(at + 1);
    if (block instanceof Block.Figure figure) {
      return next instanceof Block.Table
          || figure.caption().isBlank() && next instanceof Block.Facts;
    }
    if (block instanceof Block.Table) {
      return next instanceof Block.Facts;
    }
    return block instanceof Block.Paragraph
        ? next instanceof Block.Table || next instanceof Block.Figure || next instanceof Block.Facts
        : block instanceof Block.Caution && next instanceof Block.Facts && isAboutFacts(blocks, at)
            || block instanceof Block.Facts
                && (next instanceof Block.Caution
                    || next instanceof Block.Facts
                    || next instanceof Block.Figure shown && shown.caption().isBlank());
  }

  /** Whether what stands here is about the facts above it. */
  private static boolean isAboutFacts(List<Block> blocks, int at) {
    return at > 0 && blocks.get(at - 1) instanceof Block.Facts;
  }

  /** Whether text with more of its section to follow stands first in it: too little to end on. */
  private static boolean standsBelowItsHeading(List<Block> blocks, int at) {
    Block next = blocks.get(at + 1);
    return at > 0
        && blocks.get(at - 1) instanceof Block.Heading
        && blocks.get(at) instanceof Block.Paragraph
        && !(next instanceof Block.Heading || next instanceof Block.Section);
  }

  /** A font with its size, ink and the width it is set in. */
  private record Type(EmbeddedFont font, double size, int rgb, double width) {}

  private Piece rule() {
    return new Piece(
        4,
        4,
        Joint.FREE,
        Optional.empty(),
        (page, top) -> {
          page.content().beginArtifact();
          page.content().line(LEFT, top, LEFT + width, top, Style.RULE, Style.INK);
          page.content().endMarked();
        });
  }

  private List<Piece> lines(String text, Type type, String tag, double spaceAbove) {
    Tags.Element element = document.tags().document().child(tag);
    return lines(text, type, element, spaceAbove, LEFT);
  }

  /** Text as one piece a line; no first or last line of several stands alone on a page. */
  private List<Piece> lines(
      String text, Type type, Tags.Element element, double spaceAbove, double left) {
    List<Lines.Line> lines = Lines.of(type.font().face(), type.size(), text).within(type.width());
    var pieces = new ArrayList<Piece>();
    for (int at = 0; at < lines.size(); at++) {
      Lines.Line line = lines.get(at);
      boolean tied = lines.size() > 1 && (at == 0 || at == lines.size() - 2);
      pieces.add(
          new Piece(
              at == 0 ? spaceAbove : 0,
              type.size() * Style.LEADING,
              tied ? Joint.STAYS_WITH_NEXT : Joint.FREE,
              Optional.empty(),
              (page, top) -> {
                double y = top + type.size() * Style.BASELINE;
                page.begin(element);
                page.content().text(type.font(), type.size(), left, y, type.rgb(), line.text());
                page.content().endMarked();
              }));
    }
    return pieces;
  }

  @Override
  public List<Piece> heading(Block.Heading heading) {
    boolean chapter = heading.level() <= 2;
    int level = Math.min(chapter ? 2 : 3, deepestHeading + 1);
    deepestHeading = Math.max(deepestHeading, level);
    double size = chapter ? Style.CHAPTER : Style.SECTION;
    var type = new Type(document.bold(), size, Style.INK, width);
    List<Piece> pieces = lines(heading.text(), type, "H" + level, chapter ? 16 : 11);
    pieces.replaceAll(piece -> piece.joined(Joint.STAYS_WITH_NEXT));
    if (chapter) {
      Piece first = pieces.get(0);
      pieces.set(
          0,
          new Piece(
              first.spaceAbove(),
              first.height(),
              first.joint(),
              first.header(),
              (page, top) -> {
                document.chapter(heading.text());
                first.painter().paint(page, top);
              }));
    }
    return pieces;
  }

  @Override
  public List<Piece> paragraph(Block.Paragraph paragraph) {
    double measure = Math.min(width, Style.LONGEST_LINE);
    return lines(
        paragraph.text(), new Type(document.regular(), Style.TEXT, Style.INK, measure), "P", 5);
  }

  @Override
  public List<Piece> caution(Block.Caution caution) {
    return CautionPieces.of(caution.text(), document);
  }

  @Override
  public List<Piece> facts(Block.Facts facts) {
    return FactPieces.of(facts, document);
  }

  @Override
  public List<Piece> table(Block.Table table) {
    Tags.Element element = document.tags().document().child("Table");
    var pieces = new ArrayList<Piece>();
    if (!table.caption().isBlank()) {
      var type = new Type(document.bold(), Style.TEXT, Style.INK, width);
      pieces.addAll(lines(table.caption(), type, element.child("Caption"), 9, LEFT));
      pieces.replaceAll(piece -> piece.joined(Joint.STAYS_WITH_NEXT));
    }
    pieces.addAll(TablePieces.of(table, document, element));
    if (!pieces.isEmpty()) {
      int last = pieces.size() - 1;
      pieces.set(last, pieces.get(last).joined(Joint.FREE));
    }
    return pieces;
  }

  @Override
  public List<Piece> figure(Block.Figure figure) {
    Drawing drawing = figure.drawing();
    double drawnWidth = drawing.widthMillimetres() * Paper.POINTS;
    double drawnHeight = drawing.heightMillimetres() * Paper.POINTS;
    String words = drawing.words().isBlank() ? figure.caption() : drawing.words();
    Tags.Element element = document.tags().document().child("Figure").words(words);
    var type = new Type(document.regular(), Style.CELL, Style.SOFT, width);
    double room = height - CAPTION_ROOM;
    double scale = Math.min(1, Math.min(width / drawnWidth, room / drawnHeight));
    String shrunk =
        scale > 0.995
            ? ""
            : String.format(Locale.ROOT, " Shown at %.0f %% of real size.", scale * 100);
    List<Piece> caption = new ArrayList<>();
    if (!figure.caption().isBlank() || !shrunk.isEmpty()) {
      Tags.Element paragraph = document.tags().document().child("P");
      caption.addAll(lines((figure.caption() + shrunk).strip(), type, paragraph, 3, LEFT));
    }
    caption.add(
        0,
        new Piece(
            8,
            drawnHeight * scale,
            caption.isEmpty() ? Joint.FREE : Joint.STAYS_WITH_NEXT,
            Optional.empty(),
            (page, top) -> {
              page.begin(element);
              DrawingPainter.paint(drawing, page.content(), document.stamps(), LEFT, top, scale);
              page.content().endMarked();
            }));
    return caption;
  }

  @Override
  public List<Piece> section(Block.Section section) {
    return List.of(new Piece(0, 0, Joint.SECTION, Optional.empty(), (page, top) -> {}));
  }
}
