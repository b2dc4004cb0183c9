/** What is assumed of a bottom before its readings: mean, covariance, priors of the hyperparameters. */
package pegbed.surface.prior;
