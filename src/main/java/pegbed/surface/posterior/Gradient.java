package pegbed.surface.posterior;

/**
 * How the bottom falls at a place.
 *
 * @param dx change of depth per metre to the right, no unit
 * @param dy change of depth per metre straight out, no unit
 * @param varDx posterior variance of dx
 * @param varDy posterior variance of dy
 */
public record Gradient(double dx, double dy, double varDx, double varDy) {}
