package pegbed.ui.controls;

import java.util.function.Function;
import javafx.animation.PauseTransition;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.value.ObservableBooleanValue;
import javafx.beans.value.ObservableStringValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.text.Text;
import javafx.util.Duration;
import javafx.util.StringConverter;

/** Controls as this window makes them: each with an id, a name for screen readers and, where useful, a tip. */
public final class Controls {
    private static final Duration WORTH_A_WORD = Duration.millis(500);

    private Controls() {}

    /** A button that says what it does. */
    public static Button button(String id, String words, Runnable action) {
        Button button = new Button(words);
        button.setId(id);
        button.setOnAction(event -> action.run());
        button.setMinWidth(javafx.scene.layout.Region.USE_PREF_SIZE);
        return button;
    }

    /** A button with a longer explanation, read out and shown as a tip. */
    public static Button button(String id, String words, String tip, Runnable action) {
        Button button = button(id, words, action);
        tip(button, new SimpleStringProperty(tip));
        button.setAccessibleHelp(tip);
        return button;
    }

    /** What is shown beside a control while the pointer rests on it; made when the pointer first comes there. */
    public static void tip(Control control, ObservableStringValue words) {
        control.setOnMouseEntered(event -> {
            if (control.getTooltip() == null) {
                Tooltip tip = new Tooltip();
                tip.textProperty().bind(words);
                control.setTooltip(tip);
            }
        });
    }

    /** Shows words of one line only where there is room for all of them; what they say must stand elsewhere too. */
    public static void whole(Label label) {
        label.setMinWidth(0);
        label.visibleProperty()
                .bind(javafx.beans.binding.Bindings.createBooleanBinding(
                        () -> label.isWrapText() || widthOf(label) <= label.getWidth() + 1,
                        label.widthProperty(),
                        label.textProperty(),
                        label.fontProperty(),
                        label.wrapTextProperty()));
    }

    /** How wide a label's words are on one line; the label itself knows only once it is laid out. */
    private static double widthOf(Label label) {
        Text text = new Text(label.getText());
        text.setFont(label.getFont());
        return text.getLayoutBounds().getWidth();
    }

    /** A label that wraps. */
    public static Label wrapped(String style) {
        Label label = new Label();
        label.setWrapText(true);
        label.setMinHeight(javafx.scene.layout.Region.USE_PREF_SIZE);
        label.getStyleClass().add(style);
        return label;
    }

    /** A wrapping label that takes no room while it has nothing to say. */
    public static Label message(String id, String style, ObservableStringValue words) {
        Label label = wrapped(style);
        label.setId(id);
        label.textProperty().bind(words);
        shownWhile(label, javafx.beans.binding.Bindings.isNotEmpty(words));
        return label;
    }

    /** True once a condition has held for half a second, and until it ends: what is over sooner is not worth a word. */
    public static ObservableBooleanValue lasting(ObservableBooleanValue condition) {
        ReadOnlyBooleanWrapper lasting = new ReadOnlyBooleanWrapper(false);
        PauseTransition pause = new PauseTransition(WORTH_A_WORD);
        pause.setOnFinished(event -> lasting.set(condition.get()));
        condition.addListener((property, before, now) -> {
            if (now) {
                pause.playFromStart();
            } else {
                pause.stop();
                lasting.set(false);
            }
        });
        return lasting.getReadOnlyProperty();
    }

    /** Takes room only while a condition holds. */
    public static void shownWhile(Node node, ObservableBooleanValue condition) {
        node.visibleProperty().bind(condition);
        node.managedProperty().bind(node.visibleProperty());
    }

    /** Shows a node and gives it room, or neither. */
    public static void setShown(Node node, boolean shown) {
        node.setVisible(shown);
        node.setManaged(shown);
    }

    /** The name of a control, to stand beside it. */
    public static Label named(String words, Node control) {
        Label label = new Label(words);
        label.setLabelFor(control);
        label.setMinWidth(javafx.scene.layout.Region.USE_PREF_SIZE);
        return label;
    }

    /** A field with a name for screen readers. */
    public static TextField field(String id, String name, int columns) {
        TextField field = new TextField();
        field.setId(id);
        field.setAccessibleText(name);
        field.setPrefColumnCount(columns);
        return field;
    }

    /** Things to choose from by their words; nothing is typed, so that words are never turned back. */
    public static <T> StringConverter<T> chosenBy(Function<T, String> words) {
        return new StringConverter<>() {
            @Override
            public String toString(T thing) {
                return thing == null ? "" : words.apply(thing);
            }

            @Override
            public T fromString(String typed) {
                throw new UnsupportedOperationException("It is chosen, not typed.");
            }
        };
    }
}
