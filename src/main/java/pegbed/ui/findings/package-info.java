/** The deepest place, the flat spots, and the target depth. */
package pegbed.ui.findings;
