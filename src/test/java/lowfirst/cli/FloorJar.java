package lowfirst.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;

/** A jar to measure ours against: a few classes and the libraries that they need, nothing else. */
final class FloorJar {
  private FloorJar() {}

  /** A jar of one class of the tests with its libraries. */
  static Path of(Path jar, Class<?> main, List<Class<?>> libraries) throws IOException {
    String name = main.getName().replace('.', '/') + ".class";
    var classes = new TreeMap<String, byte[]>();
    try (InputStream bytes = main.getResourceAsStream("/" + name)) {
      classes.put(name, bytes.readAllBytes());
    }
    return of(jar, main.getName(), classes, libraries.stream().map(FloorJar::library).toList());
  }

  /** A jar of these class files and libraries. */
  static Path of(Path jar, String main, Map<String, byte[]> classes, List<Path> libraries)
      throws IOException {
    var manifest = new Manifest();
    manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
    manifest.getMainAttributes().put(Attributes.Name.MAIN_CLASS, main);
    try (var out = new JarOutputStream(Files.newOutputStream(jar), manifest)) {
      var known = new HashSet<String>();
      for (Map.Entry<String, byte[]> entry : classes.entrySet()) {
        add(entry.getKey(), entry.getValue(), out);
      }
      for (Path library : libraries) {
        addAll(library, known, out);
      }
    }
    return jar;
  }

  private static void addAll(Path library, Set<String> known, JarOutputStream out)
      throws IOException {
    try (var packed = new JarFile(library.toFile())) {
      for (JarEntry entry : packed.stream().toList()) {
        boolean wanted =
            entry.getName().endsWith(".class") && !entry.getName().contains("META-INF");
        if (wanted && known.add(entry.getName())) {
          add(entry.getName(), packed.getInputStream(entry).readAllBytes(), out);
        }
      }
    }
  }

  private static void add(String name, byte[] content, JarOutputStream out) throws IOException {
    out.putNextEntry(new JarEntry(name));
    out.write(content);
  }

  /** The jar that a class comes from. */
  static Path library(Class<?> type) {
    try {
      return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (java.net.URISyntaxException impossible) {
      throw new UncheckedIOException(new IOException(impossible));
    }
  }
}
