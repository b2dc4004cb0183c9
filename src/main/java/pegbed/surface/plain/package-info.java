/**
 * Plain interpolators beside the bottom model: straight lines between neighbouring readings and natural neighbours. They
 * know nothing of banks, noise or doubt, which makes them an honest second opinion.
 */
package pegbed.surface.plain;
