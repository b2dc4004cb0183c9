package pegbed.storage.peg;

import java.util.List;
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
     * @param fingerprint of the damaged file
     */
    record Recovered(Peg peg, String where, String why, List<String> lost, Fingerprint fingerprint) implements Opened {
        public Recovered {
            lost = List.copyOf(lost);
        }
    }
}
