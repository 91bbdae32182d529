package frillbook.discs;

/**
 * What a square grid of bases would take.
 *
 * @param rows lines of bases and matching discs
 * @param backBeside back pieces beside the last of these
 * @param backRows lines of back pieces alone
 * @param length fabric all lines take, after washing
 */
public record BaseGrid(int rows, int backBeside, int backRows, double length) {
  static BaseGrid of(BaseWay way) {
    return new BaseGrid(way.discs().rows(), way.backs().beside(), way.backs().rows(), way.length());
  }
}
