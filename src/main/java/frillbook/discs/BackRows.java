package frillbook.discs;

/**
 * Back pieces in rectangles that lie apart from the lines of discs.
 *
 * @param apart pieces in all; 0 where backs lie among the discs
 * @param beside of these, beside the last line of discs
 * @param rows lines of back pieces alone
 */
public record BackRows(int apart, int beside, int rows) {}
