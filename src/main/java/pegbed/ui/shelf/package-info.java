/** The folder of pegs. */
package pegbed.ui.shelf;
