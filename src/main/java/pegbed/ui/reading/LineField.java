package pegbed.ui.reading;

import java.util.function.Predicate;
import javafx.scene.control.TextField;
import javafx.scene.input.Clipboard;

/** A field of one line that keeps apart what tabs and line breaks keep apart in what is pasted. */
final class LineField extends TextField {
    private static final String WHITE_SPACE = "\\s+";

    private final Predicate<String> rows;

    /** @param rows takes what is pasted if it is several lines; false where it is not */
    LineField(Predicate<String> rows) {
        this.rows = rows;
    }

    /** The toolkit's own field would drop tabs and line breaks, and join what stands beside them. */
    @Override
    public void paste() {
        Clipboard clipboard = Clipboard.getSystemClipboard();
        if (clipboard.hasString() && !rows.test(clipboard.getString())) {
            replaceSelection(clipboard.getString().strip().replaceAll(WHITE_SPACE, " "));
        }
    }
}
