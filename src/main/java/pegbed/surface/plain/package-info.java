/**
 * Straight lines between neighbouring readings on a Delaunay triangulation, and a peg's bottom made of them. They know
 * nothing of noise or doubt, and of banks only where the edge is, which makes them an honest second opinion.
 */
package pegbed.surface.plain;
