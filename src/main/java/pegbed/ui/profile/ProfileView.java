package pegbed.ui.profile;

import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import pegbed.findings.DepthProfile;
import pegbed.ui.controls.Controls;

/** The bottom along a direction, cut open. */
public final class ProfileView extends VBox {
    private final ProfileViewModel model;
    private final Canvas canvas = new Canvas();
    private final Pane sheet = new Pane(canvas);
    private final BooleanProperty dark = new SimpleBooleanProperty(false);

    public ProfileView(ProfileViewModel model) {
        this.model = model;
        getStyleClass().add("profile");
        Label title = new Label();
        title.setId("profile-title");
        title.textProperty().bind(model.titleProperty());
        title.getStyleClass().add("heading");
        Label slopes = new Label();
        slopes.setId("slopes");
        slopes.textProperty().bind(model.slopesProperty());
        slopes.getStyleClass().add("quiet");
        Controls.whole(slopes);
        Controls.tip(title, model.slopesProperty());
        HBox.setHgrow(slopes, Priority.ALWAYS);
        slopes.setMaxWidth(Double.MAX_VALUE);
        // Takes the room that the title and the key leave, and no more.
        slopes.setPrefWidth(0);
        Button pointer = Controls.button(
                "follow-pointer",
                "Follow pointer",
                "Leaves the drawn line and follows the pointer again",
                model::followPointer);
        title.setMinWidth(0);
        Label key = new Label("○ lip  ● foot");
        key.getStyleClass().add("quiet");
        key.setMinWidth(0);
        HBox head = new HBox(title, key, slopes, pointer);
        head.setAlignment(Pos.CENTER_LEFT);
        head.setMinWidth(0);
        head.getStyleClass().add("row");
        Controls.shownWhile(
                pointer, Bindings.createBooleanBinding(() -> model.drawn().isPresent(), model.titleProperty()));
        sheet.setId("profile");
        sheet.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        sheet.accessibleTextProperty().bind(Bindings.concat(model.titleProperty(), ". ", model.slopesProperty()));
        sheet.setMinHeight(60);
        VBox.setVgrow(sheet, Priority.ALWAYS);
        canvas.widthProperty().bind(sheet.widthProperty());
        canvas.heightProperty().bind(sheet.heightProperty());
        getChildren().addAll(head, sheet);
        model.profileProperty().addListener((property, before, now) -> draw());
        canvas.widthProperty().addListener((property, before, now) -> draw());
        canvas.heightProperty().addListener((property, before, now) -> draw());
        dark.addListener((property, before, now) -> draw());
    }

    public BooleanProperty darkProperty() {
        return dark;
    }

    private void draw() {
        List<DepthProfile.Point> points =
                model.profileProperty().get().map(DepthProfile::points).orElse(List.of());
        ProfileDrawing drawing = new ProfileDrawing(canvas, dark.get(), model.quantities());
        drawing.clear();
        if (points.size() > 1) {
            drawing.draw(model.profileProperty().get().orElseThrow());
        }
    }
}
