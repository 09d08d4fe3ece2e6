package lowfirst.cli.option;

import java.nio.file.Path;
import java.util.List;
import lowfirst.cli.process.Surroundings;
import lowfirst.progress.Event;
import lowfirst.store.EventStore;
import lowfirst.store.StoreLocation;
import picocli.CommandLine.Option;

/** Where progress is recorded: mixed into every verb that reads or writes it. */
public final class StoreOption {
  /** Names a store without showing its password in the list of processes. */
  public static final String VARIABLE = "LOWFIRST_STORE";

  @Option(
      names = "--store",
      paramLabel = "<file or JDBC URL>",
      description =
          "where progress is recorded; usually reports/<kit>/progress.db. A shared PostgreSQL store: "
              + "jdbc:postgresql://host/database. A URL with a password is better put into the "
              + "environment variable "
              + VARIABLE
              + ".")
  private String store;

  /** The store of a kit for reading and writing. */
  public EventStore open(Surroundings surroundings, Path kit) {
    return EventStore.open(location(surroundings, kit), name(kit));
  }

  /** What is recorded of a kit; makes no store where there is none. */
  public List<Event> recorded(Surroundings surroundings, Path kit) {
    return EventStore.peek(location(surroundings, kit), name(kit));
  }

  private StoreLocation location(Surroundings surroundings, Path kit) {
    String named = store == null ? surroundings.environment().getOrDefault(VARIABLE, "") : store;
    Path usual =
        surroundings.directory().resolve("reports").resolve(name(kit)).resolve("progress.db");
    return named.isBlank()
        ? StoreLocation.of(usual)
        : StoreLocation.parse(named, surroundings.directory());
  }

  /** What the store calls a kit: its folder's name. */
  public static String name(Path kit) {
    Path name = kit.toAbsolutePath().normalize().getFileName();
    return name == null ? "kit" : name.toString();
  }
}
