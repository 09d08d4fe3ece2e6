package lowfirst.sorting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Item;
import lowfirst.board.Kit;
import lowfirst.board.OutputChannel;
import lowfirst.part.BodyOutline;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.sorting.Compartment.Role;
import lowfirst.sorting.Compartment.Use;

/**
 * The compartments of a kit: items of all boards that are the same to buy are put together, also
 * when one BOM writes {@code 4k7} and another {@code 4.7 k}.
 */
final class Compartments {
  private static final Comparator<Group> ORDER =
      Comparator.comparing((Group group) -> group.type.kind())
          .thenComparing(group -> group.type.value().isEmpty())
          .thenComparing(group -> group.type.value().map(v -> v.asDouble()).orElse(0.0))
          .thenComparing(group -> group.type.ratedVoltage().map(v -> v.asDouble()).orElse(0.0))
          .thenComparing(group -> group.type.ratedPower().map(v -> v.asDouble()).orElse(0.0))
          .thenComparing(group -> group.type.text(), String.CASE_INSENSITIVE_ORDER);

  /** The body size in a resistor's footprint name; pitch and lying or standing don't matter. */
  private static final Pattern RESISTOR_BODY =
      Pattern.compile("(?:DIN|^|[^\\d])(0204|0207|0309|0411|0414|0516|0614|0617|0918|0922)");

  private final Map<List<Object>, Group> groups = new LinkedHashMap<>();

  private Compartments() {}

  private static final class Group {
    private final PartType type;
    private final Map<String, List<Designator>> designators = new LinkedHashMap<>();
    private final Map<String, Integer> perUnit = new LinkedHashMap<>();
    private final Map<String, Integer> units = new HashMap<>();
    private final Set<Role> roles = EnumSet.noneOf(Role.class);
    private final Set<String> descriptions = new LinkedHashSet<>();
    private Optional<BodyOutline> outline = Optional.empty();

    private Group(PartType type) {
      this.type = type;
    }

    private Compartment numbered(int number) {
      var uses = new ArrayList<Use>();
      int quantity = 0;
      for (Map.Entry<String, Integer> board : perUnit.entrySet()) {
        int count = units.get(board.getKey());
        uses.add(
            new Use(
                board.getKey(),
                designators.get(board.getKey()).stream().sorted().toList(),
                board.getValue(),
                count));
        quantity += board.getValue() * count;
      }
      return new Compartment(
          number, type, uses, quantity, outline, roles, List.copyOf(descriptions));
    }
  }

  /** The compartments in sorting order: by kind, then by value, smallest first. */
  static List<Compartment> of(Kit kit) {
    var compartments = new Compartments();
    for (Board board : kit.boards()) {
      Map<Designator, Set<Role>> roles = roles(kit.channels(), board.name());
      for (Item item : board.items()) {
        if (item.isFitted() && item.partType().kind() != PartKind.BOARD_FEATURE) {
          compartments.put(board, item, roles);
        }
      }
    }
    List<Group> sorted = compartments.groups.values().stream().sorted(ORDER).toList();
    var numbered = new ArrayList<Compartment>();
    sorted.forEach(group -> numbered.add(group.numbered(numbered.size() + 1)));
    return List.copyOf(numbered);
  }

  private void put(Board board, Item item, Map<Designator, Set<Role>> roles) {
    Group group = groups.computeIfAbsent(key(item.partType()), k -> new Group(item.partType()));
    group
        .designators
        .computeIfAbsent(board.name(), none -> new ArrayList<>())
        .addAll(item.designators());
    int needed = item.designators().isEmpty() ? item.quantity() : item.designators().size();
    group.perUnit.merge(board.name(), needed, Integer::sum);
    group.units.put(board.name(), board.count());
    if (!item.description().isBlank()) {
      group.descriptions.add(item.description());
    }
    for (Designator designator : item.designators()) {
      group.roles.addAll(roles.getOrDefault(designator, Set.of()));
      if (group.outline.isEmpty()) {
        group.outline = board.outlineOf(designator);
      }
    }
  }

  private static Map<Designator, Set<Role>> roles(List<OutputChannel> channels, String board) {
    var roles = new HashMap<Designator, Set<Role>>();
    for (OutputChannel channel : channels) {
      if (channel.board().equals(board)) {
        add(roles, channel.pullDown(), Role.PULL_DOWN);
        add(roles, channel.mosfet(), Role.MOSFET);
        add(roles, channel.flybackDiode(), Role.FLYBACK_DIODE);
        add(roles, channel.fuse(), Role.FUSE);
        add(roles, channel.gateResistor(), Role.GATE_RESISTOR);
      }
    }
    return roles;
  }

  private static void add(
      Map<Designator, Set<Role>> roles, Optional<Designator> designator, Role role) {
    designator.ifPresent(
        which -> roles.computeIfAbsent(which, none -> EnumSet.noneOf(Role.class)).add(role));
  }

  /** What makes two items the same to buy. */
  private static List<Object> key(PartType type) {
    // Words such as metal film may stand where a type number belongs, beside several values.
    boolean byValue = type.value().isPresent() && type.typeNumber().isBlank();
    return List.of(
        type.kind(),
        type.value(),
        byValue ? "" : folded(type.name()),
        type.tolerance(),
        type.ratedVoltage(),
        type.ratedPower(),
        body(type));
  }

  private static String body(PartType type) {
    if (type.kind() == PartKind.RESISTOR) {
      Matcher size = RESISTOR_BODY.matcher(type.packageName().toUpperCase(Locale.ROOT));
      return size.find() ? size.group(1) : "";
    }
    // Pitch aside: leads of the same body are bent to fit.
    return folded(type.packageName().replaceAll("(?i)[ _]?P\\d+(\\.\\d+)?(mm)?", ""));
  }

  /** In capitals, without what people leave out; a point between digits and a minus count. */
  static String folded(String text) {
    return text.toUpperCase(Locale.ROOT)
        .replaceAll("(?!^-\\d)[\\s\\-_/()]|(?<!\\d)\\.|\\.(?!\\d)", "");
  }
}
