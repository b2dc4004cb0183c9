/** From the fitted bottom to answers: deepest usable place, flat spots at a target depth, slopes, profiles, zones. */
package pegbed.findings;
