package lowfirst.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class FingerprintTest {

  @Test
  void it_is_worked_out_once_and_not_before_it_is_asked_for() {
    var asked = new AtomicInteger();
    Fingerprint fingerprint = Fingerprint.of(() -> "ab" + asked.incrementAndGet());
    assertEquals(0, asked.get());
    assertEquals("ab1", fingerprint.hexadecimal());
    assertEquals("ab1", fingerprint.toString());
    assertEquals(1, asked.get());
  }

  @Test
  void those_of_the_same_figures_are_the_same() {
    Fingerprint one = Fingerprint.of("ab");
    assertEquals(one, Fingerprint.of(() -> "ab"));
    assertEquals(one.hashCode(), Fingerprint.of(() -> "ab").hashCode());
    assertNotEquals(one, Fingerprint.of("cd"));
    assertNotEquals(one.hashCode(), Fingerprint.of("cd").hashCode());
    assertNotEquals(one, "ab");
  }
}
