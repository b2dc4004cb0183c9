package pegbed.bench.quality;

import java.util.OptionalDouble;
import pegbed.findings.Confidence;
import pegbed.findings.Zone;
import pegbed.model.Place;

/** A bottom as some method sees it, with that method's answers. */
interface SurveyedBottom {
    /** Whether the method answers at a place at all. */
    boolean answers(double x, double y);

    /** Depth at a place, metres; NaN where the method has none. */
    double depthAt(double x, double y);

    /** Standard deviation there, metres; NaN from a method that tells none. */
    double sdAt(double x, double y);

    /** The deepest usable place. */
    Place deepest();

    /** The best flat spot of a zone at a target, or null where it sees none. */
    Answer flat(Zone zone, double targetMetres);

    /**
     * A spot that a method names.
     *
     * @param place where
     * @param confidence how sure it is; {@link Confidence#NONE} from a method that does not tell
     * @param probability that it is flat, if the method tells
     */
    record Answer(Place place, Confidence confidence, OptionalDouble probability) {}
}
