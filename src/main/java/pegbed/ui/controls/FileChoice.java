package pegbed.ui.controls;

import java.nio.file.Path;
import java.util.Optional;

/** Asks the person for a file or a folder; empty if none was chosen. */
public interface FileChoice {
    /**
     * A peg file.
     *
     * @param folder where to begin, if known
     */
    Optional<Path> toOpen(Optional<Path> folder);

    /**
     * The file to save a peg in.
     *
     * @param suggested a name to begin with
     * @param folder where to begin, if known
     */
    Optional<Path> toSave(String suggested, Optional<Path> folder);

    /**
     * The file to save a card in, as PDF, PNG, SVG or HTML.
     *
     * @param suggested a name to begin with
     * @param folder where to begin, if known
     */
    Optional<Path> toSaveCard(String suggested, Optional<Path> folder);

    /**
     * A folder.
     *
     * @param title what the folder is for
     */
    Optional<Path> toFolder(String title);

    /**
     * A file for other programs, as GeoPackage, GeoJSON, GeoTIFF or CSV.
     *
     * @param suggested a name to begin with
     */
    Optional<Path> toExport(String suggested);

    /** A table of readings, or points. */
    Optional<Path> toBringIn();
}
