package lowfirst;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The list of libraries in DEVELOPERS.md is the one in pom.xml, each with licence and reason. */
class DependenciesTest {

  /** Licences that let this program be passed on; tests and the build may use the last three. */
  private static final List<String> LICENCES =
      List.of("Apache-2.0", "BSD-2-Clause", "MIT", "SIL OFL 1.1", "EPL-2.0", "MPL-2.0", "GPL-3.0");

  private static final Pattern SHIPPED_NEVER = Pattern.compile("EPL|MPL|GPL");

  /** A row of the table: libraries, version, licence, where, why. */
  private record Row(List<String> libraries, String version, String licence, String where) {}

  @Test
  void the_table_in_the_guide_lists_what_the_build_uses_and_nothing_else() throws Exception {
    Map<String, String> used = used();

    Map<String, String> listed = new TreeMap<>();
    for (Row row : rows()) {
      row.libraries().forEach(name -> listed.put(fullName(name, used), row.version()));
    }

    assertTrue(used.size() > 15, "the build file was understood: " + used);
    assertEquals(used, listed);
  }

  @Test
  void each_library_has_a_licence_that_fits_where_it_is_used() throws Exception {
    for (Row row : rows()) {
      assertTrue(LICENCES.stream().anyMatch(row.licence()::contains), row.toString());
      boolean shipped = !row.where().matches("tests|build");
      assertTrue(!shipped || !SHIPPED_NEVER.matcher(row.licence()).find(), row.toString());
    }
  }

  @Test
  void each_version_is_one_release_that_stays_the_same() throws Exception {
    used().forEach((name, version) -> assertTrue(version.matches("\\d[\\w.]*"), name + version));
  }

  /** With its group, which the table leaves out where the name alone is clear. */
  private static String fullName(String name, Map<String, String> used) {
    List<String> full = used.keySet().stream().filter(key -> key.endsWith(":" + name)).toList();
    return full.size() == 1 ? full.get(0) : name;
  }

  private static List<Row> rows() throws Exception {
    var rows = new ArrayList<Row>();
    boolean inTable = false;
    for (String line : Files.readAllLines(Path.of("DEVELOPERS.md"))) {
      inTable = line.startsWith("| library |") || (inTable && line.startsWith("|"));
      if (inTable && !line.startsWith("| library |") && !line.startsWith("|---")) {
        String[] cells = line.substring(1).split("\\|", -1);
        assertEquals(6, cells.length, line);
        assertTrue(!cells[4].isBlank(), "a reason: " + line);
        List<String> names = List.of(cells[0].strip().split(", ", -1));
        rows.add(new Row(names, cells[1].strip(), cells[2].strip(), cells[3].strip()));
      }
    }
    return rows;
  }

  /** Every dependency of the build file, its profiles and its compiler included. */
  private static Map<String, String> used() throws Exception {
    var document =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(Path.of("pom.xml").toFile());
    var properties = new TreeMap<String, String>();
    NodeList all = document.getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      Element element = (Element) all.item(i);
      if (element.getParentNode().getNodeName().equals("properties")) {
        properties.put("${" + element.getNodeName() + "}", element.getTextContent().strip());
      }
    }
    var used = new TreeMap<String, String>();
    for (int i = 0; i < all.getLength(); i++) {
      Element element = (Element) all.item(i);
      boolean library = element.getNodeName().equals("dependency");
      boolean compiles = element.getParentNode().getNodeName().equals("annotationProcessorPaths");
      if ((library || compiles) && element.getElementsByTagName("artifactId").getLength() > 0) {
        String version = text(element, "version");
        String name = text(element, "groupId") + ":" + text(element, "artifactId");
        used.put(name, properties.getOrDefault(version, version));
      }
    }
    return used;
  }

  private static String text(Element element, String child) {
    return element.getElementsByTagName(child).item(0).getTextContent().strip();
  }
}
