package lowfirst.sheet.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Something to read, print or fill in, apart from how it is written.
 *
 * @param title the first heading and the PDF's title
 * @param subtitle a line below it: kit, board, unit, fingerprint; may be empty
 * @param blocks what it says, in reading order
 */
public record Document(String title, String subtitle, List<Block> blocks) {

  public Document {
    blocks = List.copyOf(blocks);
  }

  /**
   * The blocks as people read them: a table's caption that its heading holds is not said again.
   * Machines get every table by its caption.
   */
  public List<Block> toRead() {
    var read = new ArrayList<Block>(blocks.size());
    String heading = "";
    for (Block block : blocks) {
      if (block instanceof Block.Heading above) {
        heading = above.text();
      }
      read.add(
          block instanceof Block.Table table && repeats(heading, table.caption())
              ? table.withoutCaption()
              : block);
    }
    return read;
  }

  private static boolean repeats(String heading, String caption) {
    return !caption.isBlank()
        && heading.toLowerCase(Locale.ROOT).contains(caption.toLowerCase(Locale.ROOT));
  }
}
