package lowfirst.channel;

/** Every check of a channel, a rail or a return, in the order a report shows them. */
public enum CheckKind {
  GATE_LEVEL("gate voltage earns an RDS(on) line"),
  GATE_LIMIT("gate voltage within VGS"),
  GATE_DRIVE_CURRENT("driver delivers the gate current"),
  DRAIN_CURRENT("drain current within ID"),
  JUNCTION_TEMPERATURE("junction temperature"),
  DRAIN_VOLTAGE("drain voltage within VDS"),
  DIODE_VOLTAGE("flyback diode reverse voltage"),
  DIODE_CURRENT("flyback diode current"),
  FUSE_CURRENT("fuse carries the load"),
  TRACE_CURRENT("copper track carries the load"),
  CONTACT_CURRENT("contact carries the load"),
  WIRE_CURRENT("wire carries the load"),
  WIRE_DROP("voltage lost in the wire"),
  RAIL_CURRENT("supply delivers the sum"),
  RETURN_CURRENT("return conductor carries the sum"),
  RETURN_DROP("voltage lost in the return"),
  VOLTAGE_SCOPE("within extra-low voltage");

  private final String words;

  CheckKind(String words) {
    this.words = words;
  }

  /** What a report calls it. */
  public String words() {
    return words;
  }
}
