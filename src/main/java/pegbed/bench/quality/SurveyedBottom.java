package pegbed.bench.quality;

import java.util.List;
import java.util.Optional;
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

    /** What the method expects of the depth at a place where it answers; empty from a method that tells no doubt. */
    Optional<PredictedDepth> predicted(double x, double y);

    /** The deepest usable place. */
    Place deepest();

    /** The best flat spot of a zone at a target, or null where it sees none. */
    Answer flat(Zone zone, double targetMetres);

    /** The lines of the usual plan; none from a method that plans none. */
    default List<NamedLine> lines() {
        return List.of();
    }

    /**
     * A spot that a method names.
     *
     * @param place where
     * @param confidence how sure it is; {@link Confidence#NONE} from a method that does not tell
     * @param probability that it is flat, if the method tells
     */
    record Answer(Place place, Confidence confidence, OptionalDouble probability) {}

    /**
     * A line of a plan.
     *
     * @param kind what it is named for
     * @param flatAtMetres the depth at which it is said to be flat, metres
     * @param answer the place, its word and its odds
     */
    record NamedLine(Kind kind, double flatAtMetres, Answer answer) {}

    /** What a line is named for. */
    enum Kind {
        /** Flat at the target depth. */
        AT_TARGET("lines at the target"),
        /** Flat at its own depth. */
        AT_OWN_DEPTH("lines at their own depth"),
        /** Deep, flat at its own depth. */
        TRACK("lines in the track"),
        /** The lines of {@link #TRACK} again, held to their slope alone, which is what their odds are of. */
        TRACK_SLOPE("lines in the track, slope alone");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }
}
