package pegbed.model;

/**
 * How this person says depths and distances.
 *
 * @param depth unit of depths; also what a bare number means
 * @param distance unit in which distances are shown; a bare distance is always metres
 */
public record Units(Depth depth, Distance distance) {
    /** Depth in feet and inches, distance in pole sections with metres beside (UK habit, common practice). */
    public static final Units USUAL = new Units(Depth.FEET, Distance.SECTIONS);

    /** Units of depth. */
    public enum Depth {
        FEET,
        CENTIMETRES,
        METRES
    }

    /** Units of distance. */
    public enum Distance {
        SECTIONS,
        METRES,
        FEET
    }
}
