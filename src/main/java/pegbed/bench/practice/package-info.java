/** Simulated and real bottoms that are known, and how an angler would plumb them. */
package pegbed.bench.practice;
