/**
 * Straight lines between neighbouring readings on a Delaunay triangulation. They know nothing of banks, noise or doubt,
 * which makes them an honest second opinion.
 */
package pegbed.surface.plain;
