/** The bottom along a direction. */
package pegbed.ui.profile;
