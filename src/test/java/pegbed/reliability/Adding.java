package pegbed.reliability;

import java.nio.file.Path;
import java.util.Optional;
import pegbed.model.Bottom;
import pegbed.model.Extras;
import pegbed.model.InputException;
import pegbed.model.Place;
import pegbed.model.Precision;
import pegbed.model.Reading;
import pegbed.model.Typed;
import pegbed.storage.disk.PegFile;
import pegbed.storage.peg.Opened;

/** A program that adds readings to a file that another adds to as well, as two {@code pegbed add} would. */
public final class Adding {
    private Adding() {}

    /**
     * Adds readings to a file, one by one.
     *
     * @param args the file, a name for the notes, how many readings are to be added
     */
    public static void main(String[] args) {
        Path file = Path.of(args[0]);
        int added = 0;
        while (added < Integer.parseInt(args[2])) {
            String note = args[1] + added;
            try {
                Opened opened = PegFile.read(file);
                PegFile.save(file, opened.peg().withReading(reading(note)), Optional.of(opened.fingerprint()));
                System.out.println(note);
                added++;
            } catch (InputException changedByTheOther) {
                // It reads the file again and tries once more.
            }
        }
    }

    private static Reading reading(String note) {
        return new Reading(
                Typed.NOTHING,
                Place.polar(5, 0),
                Precision.PLAIN,
                1,
                Bottom.UNKNOWN,
                note,
                Optional.empty(),
                Extras.NONE);
    }
}
