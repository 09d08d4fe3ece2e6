package lowfirst.bench.web;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;

/**
 * Lets devices of the network in, one code a device. The code stands in the terminal only; once it
 * is used, or guessed wrong too often, a new one takes its place.
 */
public final class Pairing {
  /** The cookie that holds the secret of a device. */
  public static final String COOKIE = "lowfirst-device";

  /** Digits of a code: eight digits and five guesses leave a chance of 1 in 20 million a code. */
  private static final int DIGITS = 8;

  private static final int GUESSES = 5;

  private final SecureRandom random = new SecureRandom();
  private final Set<String> devices = ConcurrentHashMap.newKeySet();
  private final Consumer<String> announce;
  private String code = "";
  private int guesses;

  /**
   * @param announce tells the person at the terminal each new code
   */
  public Pairing(Consumer<String> announce) {
    this.announce = announce;
    renew();
  }

  /** The code that lets the next device in. */
  synchronized String code() {
    return code;
  }

  /** The secret of a new device when the code is right. */
  public synchronized Optional<String> admit(String typed) {
    byte[] wanted = code.getBytes(StandardCharsets.UTF_8);
    byte[] given = typed.replaceAll("\\D", "").getBytes(StandardCharsets.UTF_8);
    if (!MessageDigest.isEqual(wanted, given)) {
      guesses++;
      if (guesses >= GUESSES) {
        renew();
      }
      return Optional.empty();
    }
    byte[] secret = new byte[32];
    random.nextBytes(secret);
    String device = HexFormat.of().formatHex(secret);
    devices.add(device);
    renew();
    return Optional.of(device);
  }

  /** Whether a device was let in since the start. */
  public boolean knows(String device) {
    return devices.contains(device);
  }

  private void renew() {
    guesses = 0;
    int bound = (int) Math.pow(10, DIGITS);
    code = String.format(java.util.Locale.ROOT, "%0" + DIGITS + "d", random.nextInt(bound));
    announce.accept(code.substring(0, DIGITS / 2) + " " + code.substring(DIGITS / 2));
  }
}
