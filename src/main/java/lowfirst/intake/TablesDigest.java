package lowfirst.intake;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.Set;

/** SHA-256 (FIPS 180-4) over the names and bytes of a kit's input tables. */
final class TablesDigest {
  private TablesDigest() {}

  /**
   * Each name and each content is preceded by its length, so that no two different kits feed the
   * same bytes. Files that are no tables don't count. The files are taken in the order of their
   * names.
   */
  static String of(KitFiles files, Set<String> tables) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      for (Map.Entry<String, byte[]> file : files.contents().entrySet()) {
        if (!tables.contains(file.getKey())) {
          continue;
        }
        byte[] name = file.getKey().getBytes(StandardCharsets.UTF_8);
        digest.update(lengths(name.length, file.getValue().length));
        digest.update(name);
        digest.update(file.getValue());
      }
      return HexFormat.of().formatHex(digest.digest());
    } catch (NoSuchAlgorithmException everyPlatformHasIt) {
      throw new IllegalStateException(everyPlatformHasIt);
    }
  }

  private static byte[] lengths(int name, int content) {
    return (name + ":" + content + ":").getBytes(StandardCharsets.US_ASCII);
  }
}
