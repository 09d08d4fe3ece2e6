package lowfirst.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import lowfirst.cli.process.Surroundings;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgGroupSpec;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * What the command line library costs by itself: a program with the same verbs, options and texts
 * as ours, and empty bodies, written from our tree and packed into a jar with the library.
 */
final class CommandTreeFloor {
  private CommandTreeFloor() {}

  /** Builds the jar in a folder. */
  static Path jar(Path folder) throws IOException {
    Path source = folder.resolve("Floor.java");
    Files.writeString(source, source());
    Path classes = Files.createDirectories(folder.resolve("classes"));
    Path library = FloorJar.library(CommandLine.class);
    int status =
        ToolProvider.getSystemJavaCompiler()
            .run(
                null,
                OutputStream.nullOutputStream(),
                null,
                List.of(
                        "-proc:none",
                        "-d",
                        classes.toString(),
                        "-cp",
                        library.toString(),
                        source.toString())
                    .toArray(String[]::new));
    if (status != 0) {
      throw new IllegalStateException("the floor does not compile: " + source);
    }
    var packed = new TreeMap<String, byte[]>();
    try (Stream<Path> files = Files.list(classes)) {
      for (Path file : files.toList()) {
        packed.put(file.getFileName().toString(), Files.readAllBytes(file));
      }
    }
    return FloorJar.of(folder.resolve("floor.jar"), "Floor", packed, List.of(library));
  }

  /** The program's source. */
  private static String source() {
    var nowhere = new PrintStream(OutputStream.nullOutputStream());
    var surroundings =
        new Surroundings(
            nowhere, nowhere, Path.of(""), Clock.systemUTC(), Map.of(), Surroundings.Terminal.FILE);
    CommandSpec root = Lowfirst.commandLine(surroundings).getCommandSpec();
    var text = new StringBuilder("import picocli.CommandLine;\nimport picocli.CommandLine.*;\n");
    text.append(header(root, "Floor", "Runnable"));
    text.append("  public void run() {}\n");
    text.append("  public static void main(String[] words) {\n");
    text.append("    var line = new CommandLine(new Floor());\n");
    root.subcommands()
        .keySet()
        .forEach(verb -> text.append("    line.addSubcommand(new Verb_" + verb + "());\n"));
    text.append("    System.exit(line.execute(words));\n  }\n}\n");
    root.subcommands().forEach((verb, line) -> text.append(verb(verb, line.getCommandSpec())));
    return text.toString();
  }

  private static String header(CommandSpec spec, String name, String type) {
    var usage = spec.usageMessage();
    return String.format(
        "@Command(name = %s, mixinStandardHelpOptions = true, description = %s,%n"
            + "  footerHeading = %s, footer = %s)%nfinal class %s implements %s {%n",
        quoted(spec.name()),
        quoted(usage.description()),
        quoted(usage.footerHeading()),
        quoted(usage.footer()),
        name,
        type);
  }

  private static String verb(String verb, CommandSpec spec) {
    var text =
        new StringBuilder(header(spec, "Verb_" + verb, "java.util.concurrent.Callable<Integer>"));
    int count = 0;
    for (ArgSpec argument : spec.args()) {
      if (argument.group() == null && !isHelp(argument)) {
        text.append(field(argument, count++));
      }
    }
    for (ArgGroupSpec group : spec.argGroups()) {
      text.append("  static class Group" + count + " {\n");
      for (ArgSpec argument : group.args()) {
        text.append(field(argument, count++));
      }
      text.append("  }\n  @ArgGroup(exclusive = " + group.exclusive() + ") ");
      text.append("Group" + (count - group.args().size()) + " group" + count + ";\n");
    }
    return text + "  public Integer call() { return 0; }\n}\n";
  }

  private static boolean isHelp(ArgSpec argument) {
    return argument instanceof OptionSpec option && (option.usageHelp() || option.versionHelp());
  }

  private static String field(ArgSpec argument, int number) {
    String annotation =
        argument instanceof OptionSpec option
            ? "@Option(names = " + quoted(option.names()) + ", required = " + option.required()
            : "@Parameters(index = " + quoted(((PositionalParamSpec) argument).index().toString());
    return String.format(
        "  %s, arity = %s, paramLabel = %s, description = %s)%n  %s field%d;%n",
        annotation,
        quoted(argument.arity().toString()),
        quoted(argument.paramLabel()),
        quoted(argument.description()),
        type(((java.lang.reflect.Field) argument.userObject()).getGenericType()),
        number);
  }

  private static String type(Type type) {
    if (type instanceof ParameterizedType some) {
      return Stream.of(some.getActualTypeArguments())
          .map(CommandTreeFloor::type)
          .collect(Collectors.joining(", ", type(some.getRawType()) + "<", ">"));
    }
    // A type of ours is an enumeration or has a converter; to the library it is one more word.
    return type.getTypeName().startsWith("lowfirst") ? "String" : type.getTypeName();
  }

  private static String quoted(String... texts) {
    return Stream.of(texts)
        .map(
            text ->
                '"' + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n") + '"')
        .collect(Collectors.joining(", ", "{", "}"))
        .replaceAll(texts.length == 1 ? "^\\{|\\}$" : "$^", "");
  }
}
