/** A later visit: today's level of the water against earlier visits', and two visits compared. */
package pegbed.visits;
