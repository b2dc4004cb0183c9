package pegbed.notation;

import pegbed.model.BankPoint;
import pegbed.model.Hazard;
import pegbed.model.Reading;

/** One typed line, understood. */
public sealed interface Line {
    /** {@code DISTANCE DIRECTION DEPTH [bottom] [note]}. */
    record ReadingLine(Reading reading) implements Line {}

    /** {@code edge DISTANCE DIRECTION [DEPTH]}: where water meets bank. Which bank is not said. */
    record EdgeLine(BankPoint point) implements Line {}

    /** {@code snag DISTANCE DIRECTION [RADIUS] [note]}; without a radius it is {@value #USUAL_RADIUS_METRES} m. */
    record SnagLine(Hazard hazard) implements Line {
        /** The radius of a snag for which none was typed, metres. */
        public static final double USUAL_RADIUS_METRES = 0.5;

        /** Whether the person typed no radius, so that the usual one was taken. */
        public boolean radiusAssumed() {
            return hazard.typed().depth().isEmpty();
        }
    }
}
