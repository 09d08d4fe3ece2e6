package lowfirst.intake.column;

import java.util.List;

/** The tables of a kit, each with the columns it can't do without. */
public enum TableKind {
  BOM("bom", Column.DESIGNATORS),
  PLACEMENTS("placements", Column.DESIGNATOR, Column.X, Column.Y),
  BOARDS("boards", Column.BOARD),
  DATASHEETS("datasheets", Column.PART_TYPE, Column.SYMBOL),
  RAILS("rails", Column.RAIL),
  SUPPLIES("supplies", Column.SUPPLY, Column.RAILS),
  CHANNELS("channels", Column.CHANNEL),
  DRIVERS("drivers", Column.DRIVER),
  LOADS("loads", Column.LOAD),
  BAG("bag", Column.PART),
  SWAPS("swaps", Column.DESIGNATORS, Column.FITTED);

  private final String key;
  private final List<Column> required;

  TableKind(String key, Column... required) {
    this.key = key;
    this.required = List.of(required);
  }

  /** What column maps and the header vocabulary call it. */
  public String key() {
    return key;
  }

  /** Columns without which no row can be read. */
  public List<Column> required() {
    return required;
  }

  /** Whether it comes from other programs, in any form, and not from the kit's own author. */
  public boolean isExported() {
    return this == BOM || this == PLACEMENTS;
  }
}
