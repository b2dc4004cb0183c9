/**
 * The peg as an immutable document: what a person has said about one fishing place, in SI units.
 *
 * <p>Everything here is a value. Frame: origin at the angler's seat, y straight out across the water, x to the right
 * along the bank, metres; directions in degrees from straight out, positive to the right (clockwise from above); depths
 * in metres, positive down, below the water's level at the visit at which they were read.
 */
package pegbed.model;
