package pegbed.ui;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.Executor;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.util.Duration;
import pegbed.model.InputException;
import pegbed.session.Session;
import pegbed.storage.Folders;

/** Puts the window together and shows it. */
public final class PegbedApplication extends Application {
    private static final double WIDTH = 1366;
    private static final double HEIGHT = 740;

    @Override
    public void start(Stage stage) {
        Path home = Path.of(System.getProperty("user.home", "."));
        Path folder = Folders.own();
        Executor painter = Desk.thread("painter");
        Session.Executors executors = Desk.executors(Platform::runLater, painter);
        Desk desk = Desk.of(
                folder,
                executors,
                painter,
                Desk.thread("plans"),
                Desk.behind(painter, Desk.thread("guide")),
                Clock.systemDefaultZone());
        boolean dark = desk.remembered().dark().orElseGet(() -> SystemTheme.dark(home, System.getenv()));
        show(stage, desk, new SystemFileChoice(() -> stage), dark);
        first(desk, getParameters().getRaw());
    }

    /** Shows a window on a desk; the tests begin here too. */
    static WindowFrame show(Stage stage, Desk desk, FileChoice files, boolean dark) {
        WindowFrame frame = new WindowFrame(desk, files);
        Looks.wear(dark);
        frame.darkProperty().set(dark);
        frame.darkProperty().addListener((property, before, now) -> Looks.wear(now));
        Rectangle2D screen = Screen.getPrimary().getVisualBounds();
        Scene scene = new Scene(frame, Math.min(WIDTH, screen.getWidth()), Math.min(HEIGHT, screen.getHeight()));
        Looks.dress(scene, frame.darkProperty());
        stage.setScene(scene);
        stage.titleProperty().bind(desk.document().windowTitleProperty());
        stage.setOnCloseRequest(event -> {
            event.consume();
            frame.askAboutUnsaved(() -> desk.session().close(true, stage::close));
        });
        stage.show();
        frame.focusBox();
        Timeline looking = new Timeline(
                new KeyFrame(Duration.seconds(3), event -> desk.session().lookForOtherChanges()));
        looking.setCycleCount(Timeline.INDEFINITE);
        looking.play();
        stage.setOnHidden(event -> looking.stop());
        return frame.welcomeUnless(desk.remembered().hintClosed());
    }

    /** The file that was asked for; else what an earlier run left unsaved, the last file, or the sample. */
    private static void first(Desk desk, List<String> files) {
        if (!files.isEmpty()) {
            desk.document().open(Path.of(files.get(0)));
            return;
        }
        desk.session().takeUpLeftBehind(() -> {
            List<Path> recent = desk.document().recent();
            if (!recent.isEmpty() && java.nio.file.Files.isRegularFile(recent.get(0))) {
                desk.document().open(recent.get(0));
                return;
            }
            try {
                desk.document().begin(Samples.first());
            } catch (InputException e) {
                desk.document().refuse(e.getMessage());
            }
        });
    }
}
