/** Contours of a field: lines of equal depth, the areas at least so deep, and the levels worth drawing. */
package pegbed.surface.contour;
