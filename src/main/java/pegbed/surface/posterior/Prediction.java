package pegbed.surface.posterior;

/**
 * The bottom at one place.
 *
 * @param depthMetres expected depth, metres
 * @param sdMetres standard deviation of the depth that a rig laid there would find, metres: the model's own, and what
 *     the angler's placing of the rig adds on steep ground
 * @param slopeX change of depth per metre to the right
 * @param slopeY change of depth per metre straight out
 */
public record Prediction(double depthMetres, double sdMetres, double slopeX, double slopeY) {}
