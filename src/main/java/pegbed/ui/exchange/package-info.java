/** Files for other programs, written; readings from them, looked at before they are taken. */
package pegbed.ui.exchange;
