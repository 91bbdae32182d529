package frillbook.thread;

/**
 * What is sewn, in the unit of the brief.
 *
 * @param stitchedLength of the rows of one cushion
 * @param flatLength of the ungathered strip of one cushion
 * @param joinCount joins in the run of the whole order
 * @param stripWidth cut width of a strip, which is the length of a join
 * @param backWidth cut width of a back
 * @param widthSeam between widths of base fabric, of the whole order; 0 where one is wide enough
 */
public record Sewing(
    double stitchedLength,
    double flatLength,
    int joinCount,
    double stripWidth,
    double backWidth,
    double widthSeam) {}
