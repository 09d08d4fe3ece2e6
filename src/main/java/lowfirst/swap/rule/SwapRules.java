package lowfirst.swap.rule;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import lowfirst.part.PartKind;

/** Which rules hold for which kind of part: the tables, put together once. */
public final class SwapRules {
  private static final Map<PartKind, List<SwapRule>> TABLES = new EnumMap<>(PartKind.class);

  static {
    SwapRule[] pins = PinRule.values();
    put(PartKind.RESISTOR, ResistorRule.values());
    for (PartKind kind : PartKind.values()) {
      if (kind.isCapacitor()) {
        put(kind, CapacitorRule.values());
      }
    }
    put(PartKind.DIODE, DiodeRule.values());
    put(PartKind.SCHOTTKY_DIODE, DiodeRule.values());
    put(PartKind.ZENER_DIODE, ZenerRule.values());
    put(PartKind.LED, LedRule.values());
    put(PartKind.MOSFET, pins, MosfetRule.values());
    put(PartKind.BIPOLAR_TRANSISTOR, pins, BipolarRule.values());
    put(PartKind.OPTOCOUPLER, pins, OptocouplerRule.values());
    put(PartKind.DRIVER_ARRAY, pins, ArrayRule.values());
    put(PartKind.REGULATOR, pins, RegulatorRule.values());
    put(PartKind.INTEGRATED_CIRCUIT, LogicRule.values());
    put(PartKind.FUSE, FuseRule.values());
    put(PartKind.SOCKET, ContactRule.values());
    put(PartKind.SCREW_TERMINAL, ContactRule.values());
    put(PartKind.CONNECTOR, ContactRule.values());
    put(PartKind.PIN_HEADER, ContactRule.values());
    put(PartKind.CRYSTAL, CrystalRule.values());
  }

  private SwapRules() {}

  private static void put(PartKind kind, SwapRule[]... tables) {
    var rules = new ArrayList<SwapRule>(List.of(PlaceRule.values()));
    rules.addAll(List.of(SpaceRule.values()));
    for (SwapRule[] table : tables) {
      rules.addAll(List.of(table));
    }
    TABLES.put(kind, List.copyOf(rules));
  }

  /** The rules for a kind, the general ones first. */
  public static List<SwapRule> of(PartKind kind) {
    return TABLES.getOrDefault(kind, OtherKindRule.TABLE);
  }
}
