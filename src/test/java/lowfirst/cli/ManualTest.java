package lowfirst.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import lowfirst.cli.manual.Example;
import lowfirst.cli.process.Surroundings;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** The manual pages and the completion, in the very programs that show them. */
class ManualTest {
  private static final long LONGEST_SECONDS = 60;

  @TempDir private Path folder;
  private CommandLine program;

  /** What a program left behind. */
  private record Ended(int status, String out, String err) {}

  @BeforeEach
  void write() throws IOException {
    var nowhere = new PrintStream(OutputStream.nullOutputStream());
    program =
        Lowfirst.commandLine(
            new Surroundings(
                nowhere, nowhere, folder, Clock.systemUTC(), Map.of(), Surroundings.Terminal.FILE));
    Manual.write(folder, "2026-01-01", program);
  }

  @Test
  void there_is_one_page_for_the_program_and_one_for_each_verb() throws IOException {
    var expected = new TreeSet<>(List.of("lowfirst.1"));
    Verb.all().forEach(verb -> expected.add("lowfirst-" + verb.word() + ".1"));
    try (var pages = Files.list(folder.resolve("man/man1"))) {
      var written = new TreeSet<>(pages.map(page -> page.getFileName().toString()).toList());
      assertEquals(expected, written);
    }
  }

  @ParameterizedTest
  @EnumSource(Verb.class)
  void a_page_names_every_option_exit_status_and_example(Verb verb) throws IOException {
    var command = program.getSubcommands().get(verb.word()).getCommandSpec();
    // As a reader sees it: troff's escape of the hyphen and the quote undone.
    String page = Files.readString(page(verb)).replace("\\-", "-").replace("\\(dq", "\"");
    for (OptionSpec option : command.options()) {
      assertTrue(page.contains("\\fB" + String.join(", ", option.names())), option.longestName());
    }
    command
        .usageMessage()
        .exitCodeList()
        .keySet()
        .forEach(status -> assertTrue(page.contains("\\fB" + status + "\\fR\n"), status));
    Example.of(command).forEach(example -> assertTrue(page.contains(example.typed()), verb + page));
  }

  @ParameterizedTest
  @EnumSource(Verb.class)
  void the_manual_program_shows_a_page_without_a_warning(Verb verb) throws Exception {
    assumeInstalled("man", "LOWFIRST_MAN");
    Path page = page(verb);
    Ended shown = run("man", "--warnings", "-E", "UTF-8", "-l", "-Tutf8", page.toString());
    assertEquals(new Ended(0, shown.out(), ""), shown);
    for (String heading : List.of("NAME", "SYNOPSIS", "EXIT STATUS", "EXAMPLES", "SEE ALSO")) {
      // Bold is printed twice, with a backspace between.
      assertTrue(shown.out().replaceAll(".\b", "").contains(heading), shown.out());
    }
  }

  @ParameterizedTest
  @CsvSource({
    "'', bench check code demo loads progress sheets sort steps swap tick",
    "s, sheets sort steps swap",
    "code --as, --as",
    "code --as '', capacitor inductor network resistor",
    "code --edition '', 2016 older",
    "sheets --paper l, letter",
    "tick kit 7 --state s, seated set-aside soldered",
    "swap kit Q3 X --wh, --who --why",
    "check --bom d, drawer.csv drawings",
  })
  void bash_offers_verbs_options_values_and_files(String typed, String offered) throws Exception {
    assumeInstalled("bash", "LOWFIRST_MAN");
    Files.writeString(folder.resolve("drawer.csv"), "");
    Files.createDirectory(folder.resolve("drawings"));
    String script =
        """
        set -e
        source bash-completion/completions/lowfirst
        complete -p lowfirst | grep -q -- '-F _complete_lowfirst' || exit 9
        COMP_WORDS=(lowfirst "$@")
        COMP_CWORD=$#
        set +e
        _complete_lowfirst
        printf '%s\\n' "${COMPREPLY[@]}"
        """;
    var words = new ArrayList<>(List.of("bash", "-c", script, "bash"));
    Stream.of(typed.split(" ")).map(word -> word.equals("''") ? "" : word).forEach(words::add);
    Ended ended = run(words.toArray(String[]::new));
    assertNotEquals(9, ended.status(), "no completion is registered");
    var options = new TreeSet<>(ended.out().lines().map(String::strip).toList());
    assertEquals(new TreeSet<>(List.of(offered.split(" "))), options, ended.err());
  }

  /**
   * In a terminal of its own: what is typed, a tab, then the line put behind a command that prints
   * it.
   */
  @ParameterizedTest
  @CsvSource({
    "lowfirst ch, lowfirst check",
    "lowfirst tick kit 7 --state so, lowfirst tick kit 7 --state soldered",
    "lowfirst code --edi, lowfirst code --edition",
    "lowfirst check --bom drawe, lowfirst check --bom drawer.csv",
  })
  void zsh_completes_them_too(String typed, String completed) throws Exception {
    assumeInstalled("zsh", "LOWFIRST_ZSH");
    Files.writeString(folder.resolve("drawer.csv"), "");
    Path program = Files.createDirectories(folder.resolve("bin")).resolve("lowfirst");
    Files.writeString(program, "#!/bin/sh\n");
    assertTrue(program.toFile().setExecutable(true));
    String script =
        """
        zmodload zsh/zpty
        export PATH=$PWD/bin:$PATH TERM=dumb
        zpty terminal zsh -f -i
        zpty -w terminal 'source bash-completion/completions/lowfirst; print -r -- rea\\dy'
        zpty -r terminal seen '*ready*'
        zpty -w -n terminal "$1"$'\\t'
        sleep 1
        zpty -w -n terminal $'\\C-aprint -r -- completed: \\n'
        zpty -w terminal 'print -r -- do\\ne'
        zpty -r terminal seen '*done*'
        print -r -- "$seen"
        zpty -d terminal
        """;
    Ended ended = run("zsh", "-f", "-c", script, "zsh", typed);
    assertTrue(
        ended.out().lines().map(String::strip).anyMatch(("completed: " + completed)::equals),
        ended.out() + ended.err());
  }

  private Path page(Verb verb) {
    return folder.resolve("man/man1/lowfirst-" + verb.word() + ".1");
  }

  /** Skips, and says so, where the program is missing and nothing insists on it. */
  private static void assumeInstalled(String program, String insisting) {
    boolean there =
        Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
            .anyMatch(path -> Files.isExecutable(Path.of(path, program)));
    if ("required".equals(System.getenv(insisting))) {
      assertTrue(there, program + " is missing");
    }
    assumeTrue(there, program + " is not on this machine");
  }

  private Ended run(String... words) throws IOException, InterruptedException {
    Path out = folder.resolve("out");
    Path err = folder.resolve("err");
    var builder = new ProcessBuilder(words).directory(folder.toFile());
    builder.environment().put("MANWIDTH", "90");
    builder.environment().put("LC_ALL", "C.UTF-8");
    Process process = builder.redirectOutput(out.toFile()).redirectError(err.toFile()).start();
    process.getOutputStream().close();
    assertTrue(process.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS), words[0] + " did not end");
    return new Ended(
        process.exitValue(),
        Files.readString(out, StandardCharsets.UTF_8),
        Files.readString(err, StandardCharsets.UTF_8));
  }
}
