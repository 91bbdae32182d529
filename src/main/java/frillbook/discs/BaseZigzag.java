package frillbook.discs;

/**
 * What a zigzag of bases would take, whether or not its discs keep clear of each other.
 *
 * @param shift by how much every second line is moved in
 * @param rowStep from centre to centre of two lines along the fabric, where their discs touch
 * @param rows lines of bases, matching discs and backs in one disc
 * @param backRows lines of other back pieces
 * @param length fabric all lines take, after washing
 */
public record BaseZigzag(double shift, double rowStep, int rows, int backRows, double length) {
  static BaseZigzag of(BaseWay way, double disc) {
    DiscRows discs = way.discs();
    return new BaseZigzag(
        discs.shift(),
        DiscRows.touching(disc, discs.shift()),
        discs.rows(),
        way.backs().rows(),
        way.length());
  }
}
