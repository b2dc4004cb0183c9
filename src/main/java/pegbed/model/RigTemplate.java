package pegbed.model;

import java.util.List;
import java.util.Locale;

/**
 * How a rig for a range of depths is tied. Every figure is a start that the person changes.
 *
 * @param name what the person calls it, not blank
 * @param upToMetres used where the deepest line of the rig is no deeper than this, metres, 0.1 to 30
 * @param ground for which ground
 * @param floatSize the float's size as its maker prints it, such as {@code 4×14}
 * @param floatGrams shot that the float carries, grams, 0.01 to 50
 * @param tipToBodyMetres from the tip of the float to the base of its body, metres, 0 to 1
 * @param hookLengthMetres length of the hook length, metres, 0.02 to 2
 * @param shots its shotting, from the hook up
 * @param extras fields of a later version
 */
public record RigTemplate(
        String name,
        double upToMetres,
        Ground ground,
        String floatSize,
        double floatGrams,
        double tipToBodyMetres,
        double hookLengthMetres,
        List<ShotGroup> shots,
        Extras extras) {
    /** For which ground a rig is tied. */
    public enum Ground {
        /** Level enough for a rig to lie where it is put. */
        LEVEL,
        /** A slope, which wants an anchor near the hook (common practice). */
        SLOPE;

        /** The word that the peg file holds. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * Starting rigs. The patterns are common practice: spread shot for a slow fall in the shallows, a bulk 18 in up
     * with two droppers in deep water, a short bulk near the hook on slopes, hook lengths of 4 in shallow and 6 in
     * deep. The floats' figures are from memory and vary with the maker; the sizes follow 0.05 to 0.1 g for each foot
     * of depth.
     */
    public static final List<RigTemplate> USUAL = List.of(
            usual("edge", 0.50, Ground.LEVEL, "4×10", 0.10, 0.05, 0.10, ShotGroup.spread(3, Shot.NO_11, 0.10, 0.25)),
            usual("ledge", 1.05, Ground.LEVEL, "4×12", 0.20, 0.06, 0.10, ShotGroup.spread(5, Shot.NO_10, 0.10, 0.45)),
            usual(
                    "deep",
                    1.80,
                    Ground.LEVEL,
                    "4×14",
                    0.40,
                    0.065,
                    0.15,
                    ShotGroup.bulk(1, Shot.NO_10, 0.15),
                    ShotGroup.bulk(1, Shot.NO_10, 0.30),
                    ShotGroup.bulk(8, Shot.NO_10, 0.46)),
            usual(
                    "deepest",
                    2.40,
                    Ground.LEVEL,
                    "4×16",
                    0.50,
                    0.07,
                    0.15,
                    ShotGroup.bulk(1, Shot.NO_10, 0.15),
                    ShotGroup.bulk(1, Shot.NO_10, 0.30),
                    ShotGroup.bulk(10, Shot.NO_10, 0.46)),
            usual(
                    "very deep",
                    Reading.DEEPEST_METRES,
                    Ground.LEVEL,
                    "4×18",
                    0.80,
                    0.075,
                    0.15,
                    ShotGroup.bulk(1, Shot.NO_9, 0.15),
                    ShotGroup.bulk(1, Shot.NO_9, 0.30),
                    ShotGroup.bulk(14, Shot.NO_9, 0.46)),
            usual(
                    "slope",
                    1.05,
                    Ground.SLOPE,
                    "4×12",
                    0.20,
                    0.06,
                    0.10,
                    ShotGroup.bulk(1, Shot.NO_10, 0.10),
                    ShotGroup.bulk(4, Shot.NO_10, 0.18)),
            usual(
                    "deep slope",
                    Reading.DEEPEST_METRES,
                    Ground.SLOPE,
                    "4×14",
                    0.40,
                    0.065,
                    0.15,
                    ShotGroup.bulk(1, Shot.NO_10, 0.15),
                    ShotGroup.bulk(9, Shot.NO_10, 0.25)));

    public RigTemplate {
        if (name.isBlank()) {
            throw new IllegalArgumentException("A rig template needs a name.");
        }
        Check.within(upToMetres, 0.1, Reading.DEEPEST_METRES, "The depth up to which a rig is used, in metres,");
        Check.within(floatGrams, 0.01, 50, "The shot that the float carries, in grams,");
        Check.within(tipToBodyMetres, 0, 1, "From the float's tip to the base of its body, in metres,");
        Check.within(hookLengthMetres, 0.02, 2, "The hook length in metres");
        shots = List.copyOf(shots);
    }

    private static RigTemplate usual(
            String name,
            double upToMetres,
            Ground ground,
            String floatSize,
            double floatGrams,
            double tipToBodyMetres,
            double hookLengthMetres,
            ShotGroup... shots) {
        return new RigTemplate(
                name,
                upToMetres,
                ground,
                floatSize,
                floatGrams,
                tipToBodyMetres,
                hookLengthMetres,
                List.of(shots),
                Extras.NONE);
    }

    /** Weight of all the shot, grams. */
    public double shotGrams() {
        return shots.stream().mapToDouble(ShotGroup::grams).sum();
    }
}
