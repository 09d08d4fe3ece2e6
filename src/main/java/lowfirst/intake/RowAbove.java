package lowfirst.intake;

/** A row above the header that is a part all the same. */
final class RowAbove {
  private RowAbove() {}

  /** A designator and the numbers that such a table has, each in its column. */
  static boolean isPart(TableKind kind, Header header, Row row) {
    return kind.isExported()
        && CellShapes.isDesignators(row.cell(header.cellOf(kind.required().get(0))))
        && (kind == TableKind.BOM
            ? WholeNumber.in(row.cell(header.cellOf(Column.QUANTITY))).isPresent()
            : PlainNumber.in(row.cell(header.cellOf(Column.X))).isPresent()
                && PlainNumber.in(row.cell(header.cellOf(Column.Y))).isPresent());
  }
}
