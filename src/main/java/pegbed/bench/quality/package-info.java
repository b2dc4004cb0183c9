/** Depth, slope, deepest place and flat spots against the truth, beside other methods. */
package pegbed.bench.quality;
