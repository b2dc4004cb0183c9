/** What the fitted bottom says at a place or of a reading: values without behaviour of their own. */
package pegbed.surface.posterior;
