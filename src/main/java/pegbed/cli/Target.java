package pegbed.cli;

import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Units;
import pegbed.notation.Notation;
import pegbed.notation.NotationException;

/** A depth or height given as an option; a bare number is metres. */
final class Target {
    private static final Notation METRES =
            Notation.of(Peg.EMPTY.withUnits(new Units(Units.Depth.METRES, Units.Distance.METRES)));

    private Target() {}

    /** The target depth in metres, above 0. */
    static double metres(String typed) throws InputException {
        double metres = metres("--target", typed);
        if (metres == 0) {
            throw new InputException(
                    "--target is 0; give the depth of water that you want to fish in, such as 0.84, 2'9 or 33in.");
        }
        return metres;
    }

    /** The depth or height of an option in metres. */
    static double metres(String option, String typed) throws InputException {
        if (typed.isBlank()) {
            throw new InputException(option + " is empty; give metres as 0.84, or a unit as 2'9, 33in or 84cm.");
        }
        try {
            return METRES.depth(typed);
        } catch (NotationException e) {
            throw new InputException(option + ": " + e.getMessage(), e);
        }
    }
}
