package frillbook.press;

import java.util.HexFormat;

/**
 * The colour of the fabric in the pictures.
 *
 * @param fill of the shapes, as RRGGBB
 */
public record Colour(String fill) {
  /** Raspberry: on paper without colour, one layer is pale and all of them are deep grey. */
  public static final Colour OURS = new Colour("B03A5B");

  /** A line keeps so much of the light of the shape it goes round. */
  private static final double SHADE = .7;

  private static final int HEX = 16;

  /** Of the lines round the shapes, a darker shade, as RRGGBB. */
  public String line() {
    return shade(0) + shade(2) + shade(4);
  }

  private String shade(int from) {
    int light = Integer.parseInt(fill.substring(from, from + 2), HEX);
    return HexFormat.of().withUpperCase().toHexDigits((byte) Math.round(light * SHADE));
  }
}
