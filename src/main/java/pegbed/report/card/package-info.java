/** The card: what is taken to the peg, on A5 or on a phone. */
package pegbed.report.card;
