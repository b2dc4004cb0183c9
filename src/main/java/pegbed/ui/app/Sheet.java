package pegbed.ui.app;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;

/**
 * What lies over the window until it is put away.
 *
 * @param id of the sheet
 * @param title its heading
 * @param content what stands on it; scrolls where the window is too small
 * @param said what stands above the buttons and does not scroll
 * @param buttons its foot; the first one takes Enter
 * @param maxWidth as wide as this where the window is, points
 * @param opened is run once the sheet stands
 * @param closed is run once it is put away
 */
record Sheet(
        String id,
        String title,
        Node content,
        List<Label> said,
        List<Button> buttons,
        double maxWidth,
        Runnable opened,
        Runnable closed) {
    private static final double WIDTH = 660;

    /** A sheet of the usual width. */
    static Sheet of(String id, String title, Node content, List<Button> buttons) {
        return new Sheet(id, title, content, List.of(), buttons, WIDTH, () -> {}, () -> {});
    }

    /** With words that always stand above the buttons. */
    Sheet withSaid(List<Label> words) {
        return new Sheet(id, title, content, words, buttons, maxWidth, opened, closed);
    }

    /** At most as wide as this, points. */
    Sheet withMaxWidth(double points) {
        return new Sheet(id, title, content, said, buttons, points, opened, closed);
    }

    /** With work for when it stands, such as where the cursor goes. */
    Sheet onOpened(Runnable work) {
        return new Sheet(id, title, content, said, buttons, maxWidth, work, closed);
    }

    /** With work for when it is put away. */
    Sheet onClosed(Runnable work) {
        return new Sheet(id, title, content, said, buttons, maxWidth, opened, work);
    }
}
