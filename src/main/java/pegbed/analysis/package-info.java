/** From the bottom to answers: deepest place, flat spots, slopes, what to plumb next, lines and rigs. */
package pegbed.analysis;
