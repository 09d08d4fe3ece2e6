package lowfirst.cli;

/** A program that does nothing. */
final class BareJvm {
  private BareJvm() {}

  public static void main(String[] arguments) {}
}
