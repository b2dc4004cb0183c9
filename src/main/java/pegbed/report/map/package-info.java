/** The map of a peg as its angler sees it, as a drawing list. */
package pegbed.report.map;
