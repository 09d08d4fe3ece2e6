package lowfirst.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import lowfirst.board.Designator;
import lowfirst.intake.KitFiles;
import lowfirst.intake.KitReader;
import lowfirst.intake.KitReading;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Reads every input that fuzzing has kept, without the fuzzer: what was mended stays mended. */
class KeptInputsTest {
  private static final Path KEPT = Path.of("src", "test", "resources", "fuzz");

  @TestFactory
  Stream<DynamicTest> of_every_reader() throws IOException {
    return Arrays.stream(Reader.values())
        .map(
            reader ->
                DynamicTest.dynamicTest(
                    reader.folder(),
                    () -> {
                      for (Path input : inputs(reader)) {
                        byte[] bytes = Files.readAllBytes(input);
                        assertTimeoutPreemptively(
                            Duration.ofSeconds(20), () -> reader.read(bytes), input.toString());
                      }
                    }));
  }

  /** Else nothing of what is kept for spreadsheets would be read. */
  @Test
  void spreadsheets_are_packed_so_that_they_can_be_read() throws IOException {
    byte[] sheet = Files.readAllBytes(KEPT.resolve("sheet/struck-letters"));
    byte[] workbook = Files.readAllBytes(KEPT.resolve("workbook/own"));
    for (byte[] packed : List.of(FuzzedKit.workbook(sheet), workbook)) {
      KitReading read = KitReader.read(new KitFiles("kit", Map.of("bom.xlsx", packed), List.of()));
      assertEquals(
          List.of("R1", "R2", "R3"),
          read.kit().boards().get(0).items().stream()
              .flatMap(item -> item.designators().stream())
              .map(Designator::text)
              .toList());
      assertTrue(read.problems().stream().anyMatch(it -> it.message().contains("struck through")));
    }
  }

  /** The whole process fits in 64 MB: so reading takes no more than that beside its input. */
  @Test
  void every_reader_together_fits_in_64_MB() throws Exception {
    var command =
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Xmx64m",
            "-XX:+UseSerialGC",
            "-XX:TieredStopAtLevel=1",
            "-cp",
            System.getProperty("java.class.path"),
            KeptInputsTest.class.getName());
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(process.waitFor(60, TimeUnit.SECONDS));
    assertEquals(0, process.exitValue(), said);
  }

  /** Reads everything kept, in a process of its own. */
  public static void main(String[] arguments) throws IOException {
    for (Reader reader : Reader.values()) {
      for (Path input : inputs(reader)) {
        reader.read(Files.readAllBytes(input));
      }
    }
  }

  private static List<Path> inputs(Reader reader) throws IOException {
    try (Stream<Path> inputs = Files.list(KEPT.resolve(reader.folder()))) {
      List<Path> sorted = inputs.sorted().toList();
      assertTrue(!sorted.isEmpty(), "nothing kept for " + reader);
      return sorted;
    }
  }
}
