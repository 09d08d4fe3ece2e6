package lowfirst.cli;

import java.util.List;
import lowfirst.cli.process.ExitStatus;
import lowfirst.cli.process.Surroundings;

/**
 * Runs the verbs that should start quickly, one after the other in one process, so that the classes
 * they load can be listed for the image's archive of classes. Lists of several processes don't do:
 * of what joins a method to an interface, an archive needs as many as there are places that ask.
 */
public final class Rehearsal {
  private static final List<String> OF_A_KIT = List.of("check", "sort", "steps", "loads");

  private Rehearsal() {}

  /**
   * Runs them; done when the image is built.
   *
   * @param kits folders of kits
   * @throws IllegalStateException if one of them neither answered nor found faults
   */
  public static void main(String[] kits) {
    Surroundings process = Surroundings.ofProcess();
    run(process, "code", "brown", "black", "orange", "gold");
    for (String kit : kits) {
      OF_A_KIT.forEach(verb -> run(process, verb, kit));
    }
  }

  private static void run(Surroundings process, String... words) {
    int status = Lowfirst.run(words, process);
    if (status != ExitStatus.OK && status != ExitStatus.FINDINGS) {
      throw new IllegalStateException(String.join(" ", words) + " ended with " + status);
    }
  }
}
