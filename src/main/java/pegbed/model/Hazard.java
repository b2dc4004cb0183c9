package pegbed.model;

import java.util.List;

/**
 * Something to keep rigs, or the pole, away from.
 *
 * @param kind what it is
 * @param outline one point for a round one, three or more for an area
 * @param radiusMetres distance to keep from the point or area, metres, 0 to 100
 * @param note the person's own words, may be empty
 * @param typed what the person typed
 * @param extras fields of a later version
 */
public record Hazard(Kind kind, List<Place> outline, double radiusMetres, String note, Typed typed, Extras extras) {
    /** The kinds of hazard. */
    public enum Kind {
        SNAG("snag"),
        LILIES_OR_REEDS("lilies or reeds"),
        LOW_BRANCH("low branch"),
        OVERHEAD_LINE("overhead line"),
        OTHER("other");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The word that the peg file and the screens use. */
        public String word() {
            return word;
        }
    }

    public Hazard {
        outline = List.copyOf(outline);
        if (outline.isEmpty() || outline.size() == 2) {
            throw new IllegalArgumentException(
                    "A hazard is one point with a radius, or an area of three points or more.");
        }
        Check.within(radiusMetres, 0, 100, "The hazard's radius in metres");
    }
}
