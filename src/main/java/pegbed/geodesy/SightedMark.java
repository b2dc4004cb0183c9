package pegbed.geodesy;

import pegbed.model.Place;

/**
 * A mark of a peg whose position on the earth is known.
 *
 * @param name the mark
 * @param place where it stands in the peg's plane
 * @param latitudeDegrees WGS 84 latitude, degrees
 * @param longitudeDegrees WGS 84 longitude, degrees
 */
public record SightedMark(String name, Place place, double latitudeDegrees, double longitudeDegrees) {}
