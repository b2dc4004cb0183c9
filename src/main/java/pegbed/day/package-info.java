/** A day's fishing: what its log says of each line, which line may do better, and what visits teach together. */
package pegbed.day;
