/**
 * The points the pictures are drawn from.
 *
 * <p>Places are shares of a picture's half width, or of its height; 0 is its middle or its edge, as
 * each says.
 */
package frillbook.picture;
