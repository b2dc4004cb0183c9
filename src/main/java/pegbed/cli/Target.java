package pegbed.cli;

import pegbed.model.Bottom;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Units;
import pegbed.notation.Line;
import pegbed.notation.Notation;
import pegbed.notation.NotationException;

/** A depth given as an option. */
final class Target {
    private static final Notation METRES =
            Notation.of(Peg.EMPTY.withUnits(new Units(Units.Depth.METRES, Units.Distance.METRES)));

    private Target() {}

    /** The depth in metres; a bare number is metres. */
    static double metres(String typed) throws InputException {
        return metres("--target", typed);
    }

    /** The depth or height of an option in metres; a bare number is metres. */
    static double metres(String option, String typed) throws InputException {
        try {
            Line line = METRES.parse("1m 0 " + typed);
            if (line instanceof Line.ReadingLine reading
                    && reading.reading().note().isEmpty()
                    && reading.reading().bottom() == Bottom.UNKNOWN) {
                return reading.reading().depthMetres();
            }
        } catch (NotationException e) {
            throw new InputException(option + ": " + e.getMessage(), e);
        }
        throw new InputException(
                option + ": '" + typed + "' is not a depth; give metres as 0.84, or a unit as 2'9, 33in or 84cm.");
    }
}
