package lowfirst.intake;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.intake.text.TextOfFile;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/**
 * A file of names and texts, as {@link Properties} reads one, with the line of each; but a name may
 * have blanks where an equals sign or a colon follows it.
 *
 * @param file its path in the kit
 * @param texts what is written under each name; the last one where a name stands twice
 * @param lines the line where that begins, from 1
 */
record Entries(String file, Map<String, String> texts, Map<String, Integer> lines) {

  /** A name with blanks, which would end it there, and what parts it from its text. */
  private static final Pattern NAME_OF_WORDS =
      Pattern.compile("\\s*([^#!=:\\s\\\\][^=:\\\\]*?)\\s*[=:]");

  private static final Pattern BLANKS = Pattern.compile("\\s+");

  Entries {
    texts = Map.copyOf(texts);
    lines = Map.copyOf(lines);
  }

  /** The entries of a file; none when there is no such file. */
  static Entries of(KitFiles files, String path, List<Problem> problems) {
    var texts = new HashMap<String, String>();
    var lines = new HashMap<String, Integer>();
    Optional<byte[]> bytes = files.file(path).filter(found -> found.length > 0);
    if (bytes.isPresent()) {
      TextOfFile text = TextOfFile.of(path, bytes.get());
      problems.addAll(text.problems());
      List<String> natural = text.text().lines().toList();
      for (int at = 0; at < natural.size(); ) {
        int end = ending(natural, at);
        Place place = Place.ofLine(path, at + 1);
        var written = new ArrayList<>(natural.subList(at, end));
        written.set(0, withWholeName(written.get(0)));
        for (var entry : read(written, place, problems).entrySet()) {
          texts.put(entry.getKey().toString(), entry.getValue().toString());
          lines.put(entry.getKey().toString(), at + 1);
        }
        at = end;
      }
    }
    return new Entries(path, texts, lines);
  }

  /** Where an entry ends that begins here: a backslash at the end of a line carries it on. */
  private static int ending(List<String> natural, int from) {
    int end = from;
    boolean goesOn = !natural.get(from).stripLeading().matches("(?s)[#!].*");
    while (goesOn && end < natural.size() && isCarriedOn(natural.get(end))) {
      end++;
    }
    return Math.min(end + 1, natural.size());
  }

  private static boolean isCarriedOn(String line) {
    int backslashes = 0;
    while (backslashes < line.length() && line.charAt(line.length() - 1 - backslashes) == '\\') {
      backslashes++;
    }
    return backslashes % 2 == 1;
  }

  private static String withWholeName(String line) {
    Matcher name = NAME_OF_WORDS.matcher(line);
    return name.lookingAt()
        ? BLANKS.matcher(name.group(1)).replaceAll("\\\\ ") + line.substring(name.end(1))
        : line;
  }

  private static Properties read(List<String> lines, Place place, List<Problem> problems) {
    var entry = new Properties();
    try {
      entry.load(new StringReader(String.join("\n", lines)));
    } catch (IOException | IllegalArgumentException malformed) {
      problems.add(
          new Problem(
              Kind.CELL_UNREADABLE,
              place,
              "a \\u in this line is not followed by four hexadecimal digits",
              "write the character itself, or double the backslash"));
    }
    return entry;
  }

  /** Where an entry stands; the file as a whole when it has no such entry. */
  Place place(String name) {
    return texts.containsKey(name)
        ? Place.ofCell(file, lines.get(name), 0, name, texts.get(name))
        : Place.ofFile(file);
  }

  /** These problems, each of which names an entry, at its place. */
  List<Problem> placed(List<Problem> problems) {
    var placed = new ArrayList<Problem>();
    for (Problem problem : problems) {
      Place place = place(problem.place().header());
      placed.add(new Problem(problem.kind(), place, problem.message(), problem.remedy()));
    }
    return placed;
  }
}
