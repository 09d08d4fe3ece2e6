package lowfirst;

/** Figures that a test measures and tells, and never fails on: a slow day is no defect. */
public final class Figures {
  private Figures() {}

  /** Puts a line into the output of the run. */
  public static void tell(String what, String figures) {
    System.out.println("measured: " + what + ": " + figures);
  }
}
