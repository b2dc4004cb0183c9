package pegbed.ui.exchange;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import pegbed.exchange.ReadingsImport;
import pegbed.model.Peg;
import pegbed.ui.controls.Controls;
import pegbed.wording.ImportWords;

/** Readings of a file, as they were understood, before they are taken. */
public final class ImportSheet {
    private final Peg peg;
    private final ReadingsImport read;

    /** @param peg that they would go into */
    public ImportSheet(Peg peg, ReadingsImport read) {
        this.peg = peg;
        this.read = read;
    }

    public Node content() {
        Label words = Controls.wrapped("plain");
        words.setId("import-understood");
        words.setText(String.join(
                "\n", ImportWords.lines(peg, read.readings(), read.recognised(), read.ignored(), read.passedOver())));
        return new VBox(8, words);
    }

    /**
     * Take, and leave.
     *
     * @param take takes the readings
     * @param close puts the sheet away
     */
    public List<Button> buttons(Runnable take, Runnable close) {
        return List.of(
                Controls.button("import-take", "Take these readings", take),
                Controls.button("import-leave", "Leave them", close));
    }
}
