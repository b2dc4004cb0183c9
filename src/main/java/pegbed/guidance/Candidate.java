package pegbed.guidance;

import pegbed.model.Place;
import pegbed.model.Precision;
import pegbed.surface.survey.Sounding;

/**
 * A place where a reading may be taken next, as it is said to an angler.
 *
 * @param distanceMetres from the seat, metres
 * @param angleDegrees direction from straight out, positive to the right
 * @param precision how well the place will be known: better at a joint of the pole and on the line to a mark
 */
record Candidate(double distanceMetres, double angleDegrees, Precision precision) {
    Place place() {
        return Place.polar(distanceMetres, angleDegrees);
    }

    /** The reading as it will be, but for its depth. */
    Sounding planned(int visit) {
        return new Sounding(place().xMetres(), place().yMetres(), 0, Sounding.FIRM_SD_METRES, precision, visit);
    }
}
