package frillbook.wording;

/**
 * A wording said in every row of a table; its names may be columns of that row.
 *
 * @param along a column of the same table, which has as many rows
 */
public record RowWording(Wording wording, String along) {}
