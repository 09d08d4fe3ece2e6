package lowfirst.fuzz;

import java.util.Locale;

/**
 * Where the fuzzer enters: it changes bytes, watches which code they reach, and keeps those that
 * reach more. The system property {@code fuzz.reader} says which {@link Reader} gets them. Started
 * by {@code .ci/fuzz}.
 */
public final class Fuzzed {
  private static final Reader READER =
      Reader.valueOf(System.getProperty("fuzz.reader", "bom").toUpperCase(Locale.ROOT));

  private Fuzzed() {}

  /** Reads the tables that the tool ships; no input is to blame for their time. */
  public static void fuzzerInitialize() {
    READER.read(new byte[0]);
  }

  /** One input; whatever is thrown is a finding. */
  public static void fuzzerTestOneInput(byte[] bytes) {
    READER.read(bytes);
  }
}
