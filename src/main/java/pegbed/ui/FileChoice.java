package pegbed.ui;

import java.nio.file.Path;
import java.util.Optional;

/** Asks the person for the name of a file; empty if none was chosen. */
interface FileChoice {
    Optional<Path> toOpen();

    /** @param suggested a name to begin with */
    Optional<Path> toSave(String suggested);

    /** The card, as PDF, PNG, SVG or HTML. */
    Optional<Path> toSaveCard(String suggested);

    /** A table of readings. */
    Optional<Path> toBringIn();
}
