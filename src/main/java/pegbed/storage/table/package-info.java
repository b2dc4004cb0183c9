/** Tables as spreadsheets write them: readings, banks, places, and the log of a whole water. */
package pegbed.storage.table;
