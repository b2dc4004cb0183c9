package pegbed.ui;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import java.util.Objects;
import javafx.application.Application;
import javafx.beans.property.BooleanProperty;
import javafx.scene.Scene;

/** The look of the window: a light and a dark theme, and our own sheet on either. */
final class Looks {
    private Looks() {}

    /** All windows wear one theme. */
    static void wear(boolean dark) {
        Application.setUserAgentStylesheet(
                dark ? new PrimerDark().getUserAgentStylesheet() : new PrimerLight().getUserAgentStylesheet());
    }

    /** Puts our own sheet on a scene. */
    static void dress(Scene scene, BooleanProperty dark) {
        scene.getStylesheets()
                .add(Objects.requireNonNull(Looks.class.getResource("window.css"))
                        .toExternalForm());
        scene.getRoot().pseudoClassStateChanged(javafx.css.PseudoClass.getPseudoClass("dark"), dark.get());
        dark.addListener((property, before, now) ->
                scene.getRoot().pseudoClassStateChanged(javafx.css.PseudoClass.getPseudoClass("dark"), now));
    }
}
