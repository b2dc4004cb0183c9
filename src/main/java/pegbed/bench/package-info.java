/** Measures the model, the guidance and the plain interpolators against a known bottom. */
package pegbed.bench;
