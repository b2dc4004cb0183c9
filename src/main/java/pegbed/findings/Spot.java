package pegbed.findings;

import pegbed.model.Place;

/**
 * A place where a rig may lie, with the disc about it.
 *
 * @param place where
 * @param depthMetres mean depth over the disc of 0.5 m, metres
 * @param sdMetres standard deviation of that, metres
 * @param slope steepness of the mean gradient, rise over run
 * @param pFlat probability that it is flat at the depth that was sought, 0 to 1
 */
public record Spot(Place place, double depthMetres, double sdMetres, double slope, double pFlat) {}
