package lowfirst.cli.process;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * Takes UTF-8 and passes it on in a console's own code page: code page 850 has no ohm sign, and a
 * console that is sent UTF-8 shows two wrong signs for each right one. What the code page lacks is
 * spelled out.
 */
final class CodePageStream extends OutputStream {
  private final OutputStream console;
  private final Charset page;
  private final CharsetEncoder encoder;

  /** The start of a character whose other bytes are still to come. */
  private final ByteArrayOutputStream pending = new ByteArrayOutputStream();

  private CodePageStream(OutputStream console, Charset page) {
    this.console = console;
    this.page = page;
    this.encoder = page.newEncoder();
  }

  /** The console as a sink of UTF-8; itself where it takes that. */
  static OutputStream over(OutputStream console, Optional<Charset> page) {
    boolean utf8 = page.isEmpty() || page.get().equals(StandardCharsets.UTF_8);
    return utf8 || !page.get().canEncode() ? console : new CodePageStream(console, page.get());
  }

  /** The first of these names that this Java knows as a code page. */
  static Optional<Charset> named(String... names) {
    for (String name : names) {
      if (isKnown(name)) {
        return Optional.of(Charset.forName(name));
      }
    }
    return Optional.empty();
  }

  private static boolean isKnown(String name) {
    try {
      return name != null && !name.isEmpty() && Charset.isSupported(name);
    } catch (IllegalCharsetNameException noName) {
      return false;
    }
  }

  @Override
  public void write(int b) throws IOException {
    write(new byte[] {(byte) b}, 0, 1);
  }

  @Override
  public void write(byte[] bytes, int offset, int length) throws IOException {
    pending.write(bytes, offset, length);
    byte[] all = pending.toByteArray();
    int whole = wholeCharacters(all);
    pending.reset();
    pending.write(all, whole, all.length - whole);
    pass(new String(all, 0, whole, StandardCharsets.UTF_8));
  }

  /** How many bytes there are before a character that is not yet complete. */
  private static int wholeCharacters(byte[] bytes) {
    int lead = bytes.length - 1;
    // At most three bytes follow the one that begins a character: 10xxxxxx each.
    while (lead > bytes.length - 4 && lead > 0 && (bytes[lead] & 0xC0) == 0x80) {
      lead--;
    }
    if (lead < 0 || (bytes[lead] & 0xC0) != 0xC0) {
      return bytes.length;
    }
    int length = (bytes[lead] & 0xF0) == 0xF0 ? 4 : (bytes[lead] & 0xE0) == 0xE0 ? 3 : 2;
    return lead + length > bytes.length ? lead : bytes.length;
  }

  private void pass(String text) throws IOException {
    var shown = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            sign -> {
              String asItIs = Character.toString(sign);
              boolean has = sign < 0x80 || encoder.canEncode(asItIs);
              shown.append(has ? asItIs : SpelledOut.of(sign));
            });
    console.write(shown.toString().getBytes(page));
  }

  @Override
  public void flush() throws IOException {
    console.flush();
  }

  @Override
  public void close() throws IOException {
    console.close();
  }
}
