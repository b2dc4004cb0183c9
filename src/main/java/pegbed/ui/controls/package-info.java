/** Controls and helpers that every panel uses. */
package pegbed.ui.controls;
