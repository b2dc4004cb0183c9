package pegbed.ui.app;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import java.util.Objects;
import javafx.application.Application;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.css.PseudoClass;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.layout.Pane;

/** The look of the window: a light and a dark theme, and our own sheet on either. */
final class Theme {
    private static final PseudoClass DARK = PseudoClass.getPseudoClass("dark");

    private Theme() {}

    /** All windows wear one theme. */
    static void wear(boolean dark) {
        Application.setUserAgentStylesheet(
                dark ? new PrimerDark().getUserAgentStylesheet() : new PrimerLight().getUserAgentStylesheet());
    }

    /** A scene that wears our own sheet, and this root. */
    static Scene scene(Parent root, double width, double height, ReadOnlyBooleanProperty dark) {
        // The sheet first: a root that is in the scene before would be styled twice.
        Scene scene = new Scene(new Pane(), width, height);
        scene.getStylesheets()
                .add(Objects.requireNonNull(Theme.class.getResource("window.css"))
                        .toExternalForm());
        root.pseudoClassStateChanged(DARK, dark.get());
        dark.addListener((property, before, now) -> root.pseudoClassStateChanged(DARK, now));
        scene.setRoot(root);
        return scene;
    }
}
