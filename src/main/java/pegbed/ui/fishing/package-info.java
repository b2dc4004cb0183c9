/** The day's fishing: the lines with a tap for a fish, a bite, a feed. */
package pegbed.ui.fishing;
