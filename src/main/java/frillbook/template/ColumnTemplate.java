package frillbook.template;

/**
 * A column of a table; one formula for all its rows.
 *
 * @param name in the workbook: the column's data cells
 * @param unit as written: {@code {unit}} for a length, {@code -} for none
 */
public record ColumnTemplate(
    String name,
    String label,
    String unit,
    ValueFormat format,
    FormulaText formula,
    String note,
    Position position) {}
