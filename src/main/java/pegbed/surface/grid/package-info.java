/** Regular grids of numbers, and arithmetic on their nodes. */
package pegbed.surface.grid;
