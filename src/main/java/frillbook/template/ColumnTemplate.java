package frillbook.template;

import frillbook.formula.FormulaText;
import frillbook.source.Position;
import java.util.Optional;

/**
 * A column of a table; one formula for all its rows.
 *
 * @param name in the workbook: the column's data cells
 * @param unit as written: {@code {unit}} for a length, {@code -} for none
 * @param guard name of the line that must be 1 for this column to be calculated, beside that of its
 *     table; empty for none
 */
public record ColumnTemplate(
    String name,
    String label,
    String unit,
    ValueFormat format,
    FormulaText formula,
    String note,
    Optional<String> guard,
    Position position) {}
