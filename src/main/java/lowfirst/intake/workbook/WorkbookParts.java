package lowfirst.intake.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import lowfirst.intake.xml.XmlCursor;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;

/** The XML parts of a spreadsheet file, as they refer to each other (ECMA-376 part 2, 6.5). */
final class WorkbookParts {
  private final Map<String, byte[]> parts = new HashMap<>();
  private final List<Relation> related;

  /** A part that another refers to; the last word of the type tells what it is. */
  private record Relation(String id, String type, String part) {}

  /** Of a file that is known to unpack to little. */
  WorkbookParts(byte[] bytes) throws IOException, XmlCursor.Refused {
    try (ZipFile zip = Workbook.packed(bytes)) {
      for (ZipArchiveEntry entry : Collections.list(zip.getEntries())) {
        if (entry.getName().endsWith(".xml") || entry.getName().endsWith(".rels")) {
          try (InputStream part = zip.getInputStream(entry)) {
            parts.put(entry.getName(), part.readAllBytes());
          }
        }
      }
    }
    String workbook = "";
    for (Relation relation : relations("")) {
      workbook = relation.type().endsWith("/officeDocument") ? relation.part() : workbook;
    }
    related = relations(workbook);
  }

  /** What a part refers to; the file itself is the part without a name. */
  private List<Relation> relations(String part) throws XmlCursor.Refused {
    String folder = part.substring(0, part.lastIndexOf('/') + 1);
    var relations = new ArrayList<Relation>();
    Optional<XmlCursor> cursor =
        opened(folder + "_rels/" + part.substring(folder.length()) + ".rels");
    while (cursor.isPresent() && cursor.get().next(1)) {
      String target = cursor.get().attribute("Target");
      relations.add(
          new Relation(
              cursor.get().attribute("Id"),
              cursor.get().attribute("Type"),
              target.startsWith("/") ? target.substring(1) : folder + target));
    }
    return relations;
  }

  /** A cursor at the root of the part that the workbook calls so. */
  Optional<XmlCursor> ofId(String id) throws XmlCursor.Refused {
    return first(relation -> relation.id().equals(id));
  }

  /** A cursor at the root of the workbook's part of a type, for example styles. */
  Optional<XmlCursor> ofType(String type) throws XmlCursor.Refused {
    return first(relation -> relation.type().endsWith("/" + type));
  }

  private Optional<XmlCursor> first(Predicate<Relation> wanted) throws XmlCursor.Refused {
    Optional<Relation> found = related.stream().filter(wanted).findFirst();
    return found.isPresent() ? opened(found.get().part()) : Optional.empty();
  }

  private Optional<XmlCursor> opened(String part) throws XmlCursor.Refused {
    if (!parts.containsKey(part)) {
      return Optional.empty();
    }
    XmlCursor cursor = XmlCursor.of(parts.get(part));
    cursor.root();
    return Optional.of(cursor);
  }
}
