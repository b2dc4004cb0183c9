package pegbed.ui;

import java.io.IOException;
import java.io.InputStream;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.storage.PegReader;

/** The sample pegs that come with the program; their waters are invented. */
final class Samples {
    private static final String FIRST = "tansy-cut-9.peg.json";

    private Samples() {}

    /** The one that the first start opens. */
    static Peg first() throws InputException {
        try (InputStream bytes = Samples.class.getResourceAsStream("/pegbed/samples/" + FIRST)) {
            if (bytes == null) {
                throw new InputException("The sample peg is missing from this copy of the program.");
            }
            return PegReader.read(FIRST, bytes.readAllBytes()).peg();
        } catch (IOException e) {
            throw new InputException("The sample peg could not be read: " + e.getMessage() + ".", e);
        }
    }
}
