package lowfirst.sheet;

import java.util.List;

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
}
