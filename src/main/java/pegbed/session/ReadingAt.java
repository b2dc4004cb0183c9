package pegbed.session;

import pegbed.model.Peg;
import pegbed.model.Reading;

/**
 * Which reading of a peg.
 *
 * @param visit index of its visit, 0 for the first
 * @param index of the reading in that visit, 0 for the first
 */
public record ReadingAt(int visit, int index) {
    /** The reading itself. */
    public Reading in(Peg peg) {
        return peg.visits().get(visit).readings().get(index);
    }

    /** Where the reading is that stands at a place in {@link Peg#readings()}. */
    public static ReadingAt ofFlat(Peg peg, int flat) {
        int rest = flat;
        for (int visit = 0; visit < peg.visits().size(); visit++) {
            int size = peg.visits().get(visit).readings().size();
            if (rest < size) {
                return new ReadingAt(visit, rest);
            }
            rest -= size;
        }
        throw new IllegalArgumentException("There is no reading " + flat + ".");
    }
}
