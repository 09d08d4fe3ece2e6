package lowfirst.cli.process;

import java.io.PrintStream;

/** How far a long piece of work is, on a person's terminal; silent when a file reads. */
public final class ProgressBar implements AutoCloseable {
  private static final int CELLS = 24;
  private static final int WIDEST = 78;

  private final PrintStream out;
  private final Surroundings.Terminal terminal;
  private final int total;

  /** A bar for so many pieces of work. */
  public ProgressBar(Surroundings surroundings, int total) {
    this.out = surroundings.err();
    this.terminal = surroundings.terminal();
    this.total = total;
  }

  /** Shows that {@code done} pieces are done and which one is at hand. */
  public void show(int done, String atHand) {
    if (terminal == Surroundings.Terminal.FILE || total == 0) {
      return;
    }
    int filled = CELLS * done / total;
    String bar = "#".repeat(filled) + ".".repeat(CELLS - filled);
    String line = "[" + bar + "] " + done + " of " + total + "  " + atHand;
    String shown = line.length() > WIDEST ? line.substring(0, WIDEST) : line;
    out.print("\r" + shown + " ".repeat(WIDEST - shown.length()));
    out.flush();
  }

  /** Wipes the bar. */
  @Override
  public void close() {
    if (terminal == Surroundings.Terminal.PERSON && total > 0) {
      out.print("\r" + " ".repeat(WIDEST) + "\r");
      out.flush();
    }
  }
}
