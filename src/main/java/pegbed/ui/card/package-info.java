/** The card, looked at, saved, printed. */
package pegbed.ui.card;
