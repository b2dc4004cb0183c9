/** What neighbouring pegs of one simulated water teach. */
package pegbed.bench.waters;
