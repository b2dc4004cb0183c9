/** The reading box, the table of readings, and the next reading. */
package pegbed.ui.reading;
