package frillbook.chart;

import java.awt.image.BufferedImage;
import java.util.ArrayDeque;
import java.util.Deque;

/**
 * The largest connected figure of dark pixels on a page.
 *
 * @param width of the box around it, in pixels
 * @param height of the box around it, in pixels
 * @param pixels that are dark
 */
record Ink(int width, int height, int pixels) {
  /** Of 255; a hairline between two pixels is grey. */
  private static final int DARK = 235;

  private static final Ink NONE = new Ink(0, 0, 0);

  static Ink largest(BufferedImage page) {
    boolean[][] seen = new boolean[page.getHeight()][page.getWidth()];
    Ink largest = NONE;
    for (int y = 0; y < page.getHeight(); y++) {
      for (int x = 0; x < page.getWidth(); x++) {
        if (!seen[y][x] && isDark(page, x, y)) {
          Ink figure = figure(page, x, y, seen);
          largest = figure.pixels > largest.pixels ? figure : largest;
        }
      }
    }
    return largest;
  }

  private static boolean isDark(BufferedImage page, int x, int y) {
    return page.getRaster().getSample(x, y, 0) < DARK;
  }

  private static Ink figure(BufferedImage page, int startX, int startY, boolean[][] seen) {
    Deque<int[]> open = new ArrayDeque<>();
    open.push(new int[] {startX, startY});
    seen[startY][startX] = true;
    int left = startX;
    int right = startX;
    int bottom = startY;
    int pixels = 0;
    while (!open.isEmpty()) {
      int[] at = open.pop();
      left = Math.min(left, at[0]);
      right = Math.max(right, at[0]);
      bottom = Math.max(bottom, at[1]);
      pixels++;
      openNeighbours(page, at, seen, open);
    }
    // Pages are read from the top, so that a figure begins in its highest row.
    return new Ink(right - left + 1, bottom - startY + 1, pixels);
  }

  private static void openNeighbours(
      BufferedImage page, int[] at, boolean[][] seen, Deque<int[]> open) {
    for (int y = Math.max(0, at[1] - 1); y <= Math.min(page.getHeight() - 1, at[1] + 1); y++) {
      for (int x = Math.max(0, at[0] - 1); x <= Math.min(page.getWidth() - 1, at[0] + 1); x++) {
        if (!seen[y][x] && isDark(page, x, y)) {
          seen[y][x] = true;
          open.push(new int[] {x, y});
        }
      }
    }
  }
}
