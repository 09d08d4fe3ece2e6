package lowfirst.intake.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;
import lowfirst.problem.Kind;
import org.junit.jupiter.api.Test;

/** A small file with a large sheet in it: slow, and so apart from what is quick. */
class HugeWorkbookTest {
  @Test
  void a_file_that_unpacks_without_end_is_refused() throws IOException {
    assertEquals(List.of(Kind.FILE_TOO_LARGE), WorkbookTest.faults(bomb()));
  }

  @Test
  void one_that_hides_it_before_its_parts_is_refused_too() throws IOException {
    assertEquals(List.of(Kind.FILE_TOO_LARGE), WorkbookTest.faults(disguised(bomb())));
  }

  private static byte[] bomb() throws IOException {
    var blanks = new char[80 << 20];
    Arrays.fill(blanks, ' ');
    return WorkbookTest.workbook("<worksheet>" + new String(blanks) + "</worksheet>");
  }

  /**
   * The same with other words before each part than in the directory at the end: not packed, and so
   * as large as it is there (offsets as APPNOTE.TXT 4.3.7, 4.3.12 and 4.3.16 have them).
   */
  private static byte[] disguised(byte[] zip) {
    ByteBuffer bytes = ByteBuffer.wrap(zip.clone()).order(ByteOrder.LITTLE_ENDIAN);
    int end = zip.length - 22;
    int entry = bytes.getInt(end + 16);
    while (entry < end) {
      int size = bytes.getInt(entry + 20);
      int local = bytes.getInt(entry + 42);
      int data = local + 30 + bytes.getShort(local + 26) + bytes.getShort(local + 28);
      var sum = new CRC32();
      sum.update(zip, data, size);
      bytes.putShort(local + 6, (short) 0);
      bytes.putShort(local + 8, (short) 0);
      bytes.putInt(local + 14, (int) sum.getValue());
      bytes.putInt(local + 18, size);
      bytes.putInt(local + 22, size);
      entry += 46 + bytes.getShort(entry + 28) + bytes.getShort(entry + 30);
    }
    return bytes.array();
  }
}
