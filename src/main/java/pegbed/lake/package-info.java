/** The bottom of a whole water from a boat's log: block averaging, local conditioning, a grid without seams. */
package pegbed.lake;
