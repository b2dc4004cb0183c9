/** Gaussian processes in general: conditioning on observations, Matérn correlations, minimising an objective. */
package pegbed.surface.gaussian;
