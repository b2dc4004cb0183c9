/** The large-button view for the bank. */
package pegbed.ui.bankside;
