/**
 * From soundings to the bottom: depth, doubt and gradient anywhere, grids, contours, and plain interpolators beside the
 * model.
 */
package pegbed.surface;
