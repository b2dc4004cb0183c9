/** What the model is given: soundings, the water they lie in, the levels of their visits. */
package pegbed.surface.survey;
