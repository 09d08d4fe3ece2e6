package lowfirst.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lowfirst.cli.manual.Example;
import lowfirst.cli.process.Surroundings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import picocli.CommandLine;

/** Every example that a help shows does what it promises. */
class ExampleTest {
  @TempDir private Path folder;

  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @ParameterizedTest
  @EnumSource(Verb.class)
  void the_help_of_a_verb_ends_with_two_to_four_examples_of_that_verb(Verb verb) {
    List<Example> examples = examples(verb.word());
    assertTrue(examples.size() >= 2 && examples.size() <= 4, examples.toString());
    assertEquals(verb.word(), arguments(examples.get(0)).get(0));

    assertEquals(0, run(verb.word(), "--help"));
    String help = text(out).stripTrailing();
    String end = help.substring(help.indexOf("Examples:") + "Examples:".length());
    assertEquals(
        examples.stream().map(Example::typed).toList(),
        end.strip().lines().map(line -> line.strip().split(" {2,}")[0]).toList());
    assertEquals("", text(err));
  }

  @ParameterizedTest
  @EnumSource(value = Verb.class, mode = EnumSource.Mode.EXCLUDE, names = "BENCH")
  void every_example_runs_on_a_kit(Verb verb) throws IOException {
    kitAndTables();
    for (Example example : examples(verb.word())) {
      out.reset();
      err.reset();
      int status = run(arguments(example).toArray(String[]::new));
      assertTrue(status == 0 || status == 1, example.typed() + ": " + status + " " + text(err));
      assertFalse(text(out).isBlank(), example.typed() + ": " + text(err));
      assertFalse(text(err).contains("bug"), text(err));
      boolean accepts = arguments(example).contains("--accept");
      assertEquals(accepts, text(err).contains("recorded in swaps.csv"), text(err));
    }
  }

  @Test
  void the_examples_of_the_program_itself_are_those_of_verbs_or_helps() {
    List<String> ofVerbs =
        Verb.all().stream()
            .flatMap(verb -> examples(verb.word()).stream().map(Example::typed))
            .toList();
    for (Example example : Example.of(Lowfirst.commandLine(surroundings()).getCommandSpec())) {
      if (!ofVerbs.contains(example.typed())) {
        assertTrue(example.typed().endsWith("--help"), example.typed());
        assertEquals(0, run(arguments(example).toArray(String[]::new)), text(err));
      }
    }
  }

  /** The network is left out: tests listen on this machine alone. */
  @Test
  @Timeout(60)
  void the_first_example_of_bench_serves_until_it_is_stopped() throws Exception {
    kitAndTables();
    var words = new ArrayList<>(arguments(examples("bench").get(0)));
    words.addAll(List.of("--port", "0"));
    var status = new CompletableFuture<Integer>();
    var bench = new Thread(() -> status.complete(run(words.toArray(String[]::new))));
    bench.start();
    while (!text(out).contains("the bench is at http") && bench.isAlive()) {
      Thread.sleep(20);
    }
    bench.interrupt();
    assertEquals(0, status.get(), text(err));
    assertTrue(text(out).contains("the bench is at http"), text(err));
  }

  @Test
  void every_example_of_bench_is_understood() {
    for (Example example : examples("bench")) {
      CommandLine line = Lowfirst.commandLine(surroundings());
      String[] words = arguments(example).toArray(String[]::new);
      assertTrue(line.parseArgs(words).hasSubcommand(), example.typed());
    }
  }

  @Test
  void a_purpose_and_a_redirection_are_no_words_of_the_command() {
    Example demo = examples("demo").get(1);
    assertEquals(List.of("progress", "reports/sample-boms/bell-player"), arguments(demo));
    assertNotEquals("", demo.purpose());
    assertEquals(List.of("sort", "my-kit", "--csv"), arguments(examples("sort").get(1)));
    assertEquals("10k 1% 0.5W", arguments(examples("swap").get(1)).get(3));
  }

  /** What the examples name: a kit, and tables of the kind that a design tool exports. */
  private void kitAndTables() throws IOException {
    Path kit = folder.resolve("my-kit");
    SampleKit.unpackInto(kit);
    Files.copy(kit.resolve("datasheets.csv"), folder.resolve("drawer.csv"));
    String bom = Files.readString(kit.resolve("driver/bom.csv"));
    Files.writeString(folder.resolve("parts.csv"), bom.replaceFirst(",value,", ",Comment,"));
    List<String> places = Files.readAllLines(kit.resolve("driver/placements.csv"));
    Files.write(folder.resolve("top.csv"), places.subList(0, 100));
    var bottom = Stream.concat(Stream.of(places.get(0)), places.stream().skip(100));
    Files.write(
        folder.resolve("bottom.csv"), bottom.map(row -> row.replace(",top,", ",bottom,")).toList());
  }

  private List<Example> examples(String verb) {
    return Example.of(
        Lowfirst.commandLine(surroundings()).getSubcommands().get(verb).getCommandSpec());
  }

  private int run(String... arguments) {
    return Lowfirst.run(arguments, surroundings());
  }

  private Surroundings surroundings() {
    return Outcome.surroundings(out, err, folder, Clock.systemUTC());
  }

  private static String text(ByteArrayOutputStream stream) {
    return stream.toString(StandardCharsets.UTF_8);
  }

  /** The words after {@code lowfirst}, as a shell cuts them; what it redirects is left out. */
  private static List<String> arguments(Example example) {
    var words = new ArrayList<String>();
    Matcher word = WORD.matcher(example.typed().replaceFirst(" > .*", ""));
    while (word.find()) {
      words.add(word.group(1) == null ? word.group(2) : word.group(1));
    }
    return words.subList(1, words.size());
  }
}
