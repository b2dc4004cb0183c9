package pegbed.ui.controls;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Window;

/** The system's own file dialogs. */
public final class SystemFileChoice implements FileChoice {
    private static final FileChooser.ExtensionFilter PEGS = new FileChooser.ExtensionFilter("Peg files", "*.peg.json");
    private static final FileChooser.ExtensionFilter TABLES = new FileChooser.ExtensionFilter(
            "Tables and points", "*.csv", "*.txt", "*.tsv", "*.geojson", "*.json", "*.gpkg");
    private static final FileChooser.ExtensionFilter EXPORTS =
            new FileChooser.ExtensionFilter("For other programs", "*.gpkg", "*.geojson", "*.tif", "*.csv");
    private static final FileChooser.ExtensionFilter CARDS =
            new FileChooser.ExtensionFilter("Cards", "*.pdf", "*.png", "*.svg", "*.html");
    private static final FileChooser.ExtensionFilter ALL = new FileChooser.ExtensionFilter("All files", "*");

    private final Supplier<Window> owner;

    public SystemFileChoice(Supplier<Window> owner) {
        this.owner = owner;
    }

    @Override
    public Optional<Path> toOpen(Optional<Path> folder) {
        return chosen(chooser("Open a peg", PEGS, folder).showOpenDialog(owner.get()));
    }

    @Override
    public Optional<Path> toSave(String suggested, Optional<Path> folder) {
        FileChooser chooser = chooser("Save the peg", PEGS, folder);
        chooser.setInitialFileName(suggested);
        return chosen(chooser.showSaveDialog(owner.get()));
    }

    @Override
    public Optional<Path> toSaveCard(String suggested, Optional<Path> folder) {
        FileChooser chooser = chooser("Save the card", CARDS, folder);
        chooser.setInitialFileName(suggested);
        return chosen(chooser.showSaveDialog(owner.get()));
    }

    @Override
    public Optional<Path> toExport(String suggested) {
        FileChooser chooser = chooser("Export the peg", EXPORTS, Optional.empty());
        chooser.setInitialFileName(suggested);
        return chosen(chooser.showSaveDialog(owner.get()));
    }

    @Override
    public Optional<Path> toBringIn() {
        return chosen(chooser("Bring in readings", TABLES, Optional.empty()).showOpenDialog(owner.get()));
    }

    @Override
    public Optional<Path> toFolder(String title) {
        DirectoryChooser chooser = new DirectoryChooser();
        chooser.setTitle(title);
        return chosen(chooser.showDialog(owner.get()));
    }

    private static FileChooser chooser(String title, FileChooser.ExtensionFilter kind, Optional<Path> folder) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(title);
        // One that is gone would keep the dialog from opening.
        folder.filter(Files::isDirectory).map(Path::toFile).ifPresent(chooser::setInitialDirectory);
        chooser.getExtensionFilters().addAll(kind, ALL);
        return chooser;
    }

    private static Optional<Path> chosen(File file) {
        return Optional.ofNullable(file).map(File::toPath);
    }
}
