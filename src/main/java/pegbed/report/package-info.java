/** Drawings of a peg: one drawing list in metres, and its painters. */
package pegbed.report;
