package pegbed.ui.app;

import java.io.IOException;
import java.io.InputStream;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.storage.peg.PegReader;

/** The sample pegs that come with the program; their waters are invented. */
public final class SamplePegFiles {
    private static final String FIRST = "tansy-cut-9.peg.json";

    private SamplePegFiles() {}

    /** The one that the first start opens. */
    public static Peg first() throws InputException {
        try (InputStream bytes = SamplePegFiles.class.getResourceAsStream("/pegbed/samples/" + FIRST)) {
            if (bytes == null) {
                throw new InputException("The sample peg is missing from this copy of the program.");
            }
            return PegReader.read(FIRST, bytes.readAllBytes()).peg();
        } catch (IOException e) {
            throw new InputException("The sample peg could not be read: " + e.getMessage() + ".", e);
        }
    }
}
