package lowfirst.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SampleKitTest {
  private static final Path IN_THE_CHECKOUT = Path.of("sample-boms", SampleKit.NAME);

  @Test
  void every_file_of_the_sample_folder_is_shipped_and_no_other() throws IOException {
    try (var files = Files.walk(IN_THE_CHECKOUT)) {
      List<String> names =
          files
              .filter(Files::isRegularFile)
              .map(file -> IN_THE_CHECKOUT.relativize(file).toString().replace('\\', '/'))
              .sorted()
              .toList();
      assertEquals(names, SampleKit.FILES);
    }
  }

  @Test
  void the_unpacked_kit_is_byte_for_byte_the_one_in_the_checkout(@TempDir Path folder)
      throws IOException {
    assertEquals(List.of(), SampleKit.unpackInto(folder));
    for (String file : SampleKit.FILES) {
      assertArrayEquals(
          Files.readAllBytes(IN_THE_CHECKOUT.resolve(file)),
          Files.readAllBytes(folder.resolve(file)),
          file);
    }
  }

  @Test
  void a_table_that_the_user_changed_is_kept_and_named(@TempDir Path folder) throws IOException {
    SampleKit.unpackInto(folder);
    Files.writeString(folder.resolve("loads.csv"), "load\n");
    assertEquals(List.of("loads.csv"), SampleKit.unpackInto(folder));
    assertEquals("load\n", Files.readString(folder.resolve("loads.csv")));
  }
}
