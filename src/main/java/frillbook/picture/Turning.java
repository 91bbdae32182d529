package frillbook.picture;

/**
 * From a place measured along and across the strips to its place in the picture: x = xRun·run +
 * xStack·stack, y = yRun·run + yStack·stack + what the lines' y begins at. 1 is the height of the
 * picture.
 */
public record Turning(double xRun, double xStack, double yRun, double yStack) {
  private static final double ROOT2 = Math.sqrt(2);

  static Turning of(CutFabric fabric) {
    double one = 1 / fabric.scale();
    double slant = one / ROOT2;
    if (!fabric.isBias()) {
      return fabric.turn() == 0 ? new Turning(one, 0, 0, one) : new Turning(0, one, one, 0);
    }
    return fabric.turn() == 0
        ? new Turning(slant, slant, -slant, slant)
        : new Turning(-slant, slant, -slant, -slant);
  }
}
