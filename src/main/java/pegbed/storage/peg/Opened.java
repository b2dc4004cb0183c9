package pegbed.storage.peg;

import java.util.List;
import java.util.Optional;
import pegbed.model.Peg;

/** What reading a peg file gave: the whole peg, or what could be recovered of a damaged one. */
public sealed interface Opened {
    /** The peg, as far as it could be read. */
    Peg peg();

    /** What the file held, byte for byte, when it was read. */
    Fingerprint fingerprint();

    /**
     * A sound file.
     *
     * @param peg the peg
     * @param fingerprint of the file; hand it back when saving, so that another's changes are not overwritten
     */
    record Whole(Peg peg, Fingerprint fingerprint) implements Opened {}

    /**
     * A damaged file, which stays as it is. Save the recovered peg under another name, or let the person decide.
     *
     * @param peg all that could be read
     * @param where the first damage, such as {@code line 12, column 5}
     * @param why what is wrong there, a whole sentence
     * @param lost what could not be read, an entry each, the first with its place and words
     * @param readings how many readings the text begins, those that could not be read included
     * @param fingerprint of the damaged file
     */
    record Recovered(Peg peg, String where, String why, List<String> lost, int readings, Fingerprint fingerprint)
            implements Opened {
        /** From this share on, most of a visit's work is gone. */
        private static final double NEARLY_ALL = 0.9;

        public Recovered {
            lost = List.copyOf(lost);
        }

        /**
         * That the file is damaged, where and how, and how much is lost; without the full stop, so that what becomes of
         * it can follow behind a semicolon.
         *
         * @param name what to call the file
         */
        public String inWords(String name) {
            return name + " is damaged at " + where + ": " + why + " "
                    + lostReadings()
                            .map(sentence -> sentence.substring(0, sentence.length() - 1))
                            .orElse(lost.size() == 1 ? "One part was lost" : lost.size() + " parts were lost");
        }

        /** How many of the readings could not be read, one sentence; empty if all could. */
        public Optional<String> lostReadings() {
            int gone = readings - peg.readings().size();
            if (gone <= 0) {
                return Optional.empty();
            }
            if (gone == readings) {
                return Optional.of(
                        readings == 1 ? "The one reading was lost." : "All " + readings + " readings were lost.");
            }
            return Optional.of(
                    gone >= NEARLY_ALL * readings
                            ? "Nearly all of " + readings + " readings were lost."
                            : gone + " of " + readings + (gone == 1 ? " readings was lost." : " readings were lost."));
        }
    }
}
