package pegbed.day;

import java.util.OptionalDouble;
import pegbed.model.Place;

/** How deep a place was at a visit. */
@FunctionalInterface
public interface DepthAt {
    /**
     * The depth, metres; empty where it is not known.
     *
     * @param place where
     * @param visit which visit, from 0
     */
    OptionalDouble metres(Place place, int visit);
}
