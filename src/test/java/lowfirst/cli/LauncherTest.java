package lowfirst.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The script that starts the image, with a stand-in for Java that prints what reaches it. */
class LauncherTest {
  private static final Path SHELL = Path.of("/bin/sh");

  @TempDir private Path home;

  private String started(Map<String, String> environment, String... words) throws Exception {
    assumeTrue(Files.isExecutable(SHELL), "no shell here");
    Path bin = Files.createDirectories(home.resolve("bin"));
    Path script = bin.resolve("lowfirst");
    Files.copy(Path.of("src", "packaging", "lowfirst.sh"), script);
    Path java = bin.resolve("java");
    Files.writeString(java, "#!/bin/sh\necho \"locale=$LC_ALL words=$*\"\n");
    if (!java.toFile().setExecutable(true)) {
      throw new IOException("can't make " + java + " a program");
    }
    var command = new ArrayList<String>();
    command.add(SHELL.toString());
    command.add(script.toString());
    command.addAll(List.of(words));
    var builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().keySet().removeIf(name -> name.startsWith("LC_") || name.equals("LANG"));
    builder.environment().putAll(environment);
    Process process = builder.start();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(true, process.waitFor(60, TimeUnit.SECONDS));
    return out;
  }

  /**
   * LC_ALL wins over LC_CTYPE, and that over LANG; with none of them it is the C locale (POSIX).
   */
  @ParameterizedTest(name = "LC_ALL={0} LC_CTYPE={1} LANG={2}")
  @CsvSource({
    "'', '', '', C.UTF-8",
    "'', '', C, C.UTF-8",
    "POSIX, de_DE.UTF-8, de_DE.UTF-8, C.UTF-8",
    "'', C, de_DE.UTF-8, C.UTF-8",
    "'', '', de_DE.UTF-8, ''",
    "'', de_DE.ISO-8859-1, C, ''",
    "de_DE.UTF-8, C, C, de_DE.UTF-8"
  })
  void a_locale_without_letters_gives_way_and_any_other_stays(
      String all, String type, String lang, String reaches) throws Exception {
    var environment = new HashMap<String, String>();
    Map.of("LC_ALL", all, "LC_CTYPE", type, "LANG", lang)
        .forEach((name, value) -> environment.put(name, value));
    environment.values().removeIf(String::isEmpty);
    String out = started(environment, "check", "kit");
    assertEquals("locale=" + reaches, out.split(" ")[0].strip());
  }

  @Test
  void words_reach_the_program_as_they_are() throws Exception {
    String out = started(Map.of("LANG", "C.UTF-8"), "check", "a  b", "--explain");
    assertEquals(
        "-m lowfirst/lowfirst.cli.Main check a  b --explain",
        out.substring(out.indexOf("-m ")).strip());
  }

  /** Java's better compiler takes longer than most verbs do. */
  @ParameterizedTest
  @CsvSource({"check, true", "steps, true", "code, true", "bench, false", "swap, false"})
  void only_verbs_that_may_run_for_long_are_compiled_well(String verb, boolean quick)
      throws Exception {
    assertEquals(
        quick, started(Map.of("LANG", "C.UTF-8"), verb).contains(" -XX:TieredStopAtLevel=1 "));
  }
}
