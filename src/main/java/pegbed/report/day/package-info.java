/** Pictures of a day's fishing, and of what visits gave. */
package pegbed.report.day;
