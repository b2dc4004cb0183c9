/** Made days of fishing, on which the advice of a day is measured against simple habits and against knowing all. */
package pegbed.bench.day;
