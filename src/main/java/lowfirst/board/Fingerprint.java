package lowfirst.board;

import java.util.function.Supplier;

/**
 * What tells one set of a kit's tables from any other: SHA-256 (FIPS 180-4) in hexadecimal. Worked
 * out when it is asked for, since only sheets print it.
 */
public final class Fingerprint {
  private final Supplier<String> source;
  private String hexadecimal = "";

  private Fingerprint(Supplier<String> source) {
    this.source = source;
  }

  /** One that is known. */
  public static Fingerprint of(String hexadecimal) {
    return of(() -> hexadecimal);
  }

  /** One to be worked out: asked for at most once. */
  public static Fingerprint of(Supplier<String> source) {
    return new Fingerprint(source);
  }

  /** In hexadecimal. */
  public synchronized String hexadecimal() {
    if (hexadecimal.isEmpty()) {
      hexadecimal = source.get();
    }
    return hexadecimal;
  }

  @Override
  public boolean equals(Object other) {
    return this == other
        || other instanceof Fingerprint that && hexadecimal().equals(that.hexadecimal());
  }

  @Override
  public int hashCode() {
    return hexadecimal().hashCode();
  }

  @Override
  public String toString() {
    return hexadecimal();
  }
}
