package frillbook.pressing;

/**
 * A name under which a workbook says something else than the engine.
 *
 * @param row of a table, from 1; 0 for a single value
 * @param yours what the workbook's formula gives, a Double, a String or an error
 * @param ours what the engine says
 */
public record Disagreement(String name, int row, Object yours, Object ours) {}
