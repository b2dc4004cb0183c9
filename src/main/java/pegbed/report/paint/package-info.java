/** Painters of a drawing list: bitmaps and SVG. */
package pegbed.report.paint;
