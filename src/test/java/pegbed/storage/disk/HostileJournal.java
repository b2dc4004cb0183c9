package pegbed.storage.disk;

import java.util.Optional;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.storage.peg.Opened;
import pegbed.storage.peg.PegReader;

/** What stands in a journal, from its bytes; for tests of other packages. */
public final class HostileJournal {
    private HostileJournal() {}

    /** The bytes of a journal with one state. */
    public static byte[] of(Peg peg) {
        return JournalRecords.record(new Journal.Entry(peg, Optional.empty()));
    }

    /** The last state, as the next start would read it. */
    public static Optional<Opened> last(byte[] bytes) throws InputException {
        Optional<JournalRecords.Kept> kept = JournalRecords.last(bytes);
        return kept.isPresent()
                ? Optional.of(PegReader.read("the journal", kept.get().body()))
                : Optional.empty();
    }
}
