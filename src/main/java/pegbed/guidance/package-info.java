/**
 * Where to plumb next: candidates, the value of one more reading for the map and for the decisions, and when to stop.
 */
package pegbed.guidance;
