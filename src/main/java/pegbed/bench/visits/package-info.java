/** Levels and changes of the bottom over simulated visits. */
package pegbed.bench.visits;
