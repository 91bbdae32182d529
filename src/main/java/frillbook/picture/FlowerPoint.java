package frillbook.picture;

/**
 * A point of the sewn rows with their ripple, seen from above; 1 is half the picture.
 *
 * @param flowerAngle radians turned from where the rows begin
 * @param flowerRadius from the centre; a ripple may cross it
 */
public record FlowerPoint(
    double flowerAngle, double flowerRadius, double flowerX, double flowerY) {}
