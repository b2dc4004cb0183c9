package pegbed.ui.app;

import java.nio.file.Path;
import java.util.List;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.geometry.Rectangle2D;
import javafx.stage.Screen;
import javafx.stage.Stage;
import pegbed.session.Session;
import pegbed.storage.disk.Folders;
import pegbed.ui.controls.FileChoice;
import pegbed.ui.controls.PeriodicTask;
import pegbed.ui.controls.SystemFileChoice;

/** Puts the window together and shows it. */
public final class PegbedApplication extends Application {
    private static final double WIDTH = 1366;
    private static final double HEIGHT = 740;
    private static final double LEAST_WIDTH = 800;
    private static final double LEAST_HEIGHT = 600;

    /** How often it is looked whether another program has changed the file. */
    private static final long LOOK_MILLISECONDS = 3000;

    /** Set before the toolkit starts, which makes the application itself. */
    private static volatile StartUp begun;

    /**
     * Opens the window and returns when it is closed.
     *
     * @param pictureIsThere is run when the first picture is
     * @param files the peg file to open, or none
     */
    static void open(Runnable pictureIsThere, String... files) {
        begun = new StartUp(Folders.own(), Platform::runLater, pictureIsThere, List.of(files));
        launch(PegbedApplication.class);
    }

    @Override
    public void start(Stage stage) {
        StartUp beginning = begun;
        WindowViewModels desk = beginning.takeOver();
        Session session = desk.session();
        Thread.setDefaultUncaughtExceptionHandler(new UncaughtErrors(session.log(), Platform::runLater, session::fail));
        Path home = Path.of(System.getProperty("user.home", "."));
        boolean dark = desk.remembered().dark().orElseGet(() -> SystemTheme.dark(home, System.getenv()));
        WindowFrame frame = dressed(stage, desk, new SystemFileChoice(() -> stage), dark);
        frame.main().map().onShown(beginning::pictureIsThere);
        // In steps, so that answers that have come meanwhile are painted while the rest is done.
        Platform.runLater(() -> {
            frame.applyCss();
            Platform.runLater(() -> show(stage, frame));
        });
    }

    /** Shows a window on a desk; the tests begin here too. */
    static WindowFrame show(Stage stage, WindowViewModels desk, FileChoice files, boolean dark) {
        return show(stage, dressed(stage, desk, files, dark));
    }

    private static WindowFrame dressed(Stage stage, WindowViewModels desk, FileChoice files, boolean dark) {
        // Before the first control, which would else bring the toolkit's own look.
        Theme.wear(dark);
        WindowFrame frame = new WindowFrame(desk, files, dark);
        frame.darkProperty().addListener((property, before, now) -> Theme.wear(now));
        Rectangle2D screen = Screen.getPrimary().getVisualBounds();
        stage.setScene(Theme.scene(frame, Math.min(WIDTH, screen.getWidth()), height(screen), frame.darkProperty()));
        stage.titleProperty().bind(desk.document().windowTitleProperty());
        stage.setOnCloseRequest(event -> {
            event.consume();
            frame.askAboutUnsaved(() -> desk.session().close(true, stage::close));
        });
        return frame;
    }

    /** On a screen that stands upright the window does too: its map lies above the rest. */
    static double height(Rectangle2D screen) {
        boolean upright = screen.getHeight() > screen.getWidth();
        return upright ? screen.getHeight() : Math.min(HEIGHT, screen.getHeight());
    }

    /** Some window managers show a window at a size of their own, and too small a one if it has no least size. */
    private static void size(Stage stage) {
        Rectangle2D screen = Screen.getPrimary().getVisualBounds();
        stage.setMinWidth(Math.min(LEAST_WIDTH, screen.getWidth()));
        stage.setMinHeight(Math.min(LEAST_HEIGHT, screen.getHeight()));
        stage.setWidth(Math.min(WIDTH, screen.getWidth()));
        stage.setHeight(height(screen));
    }

    private static WindowFrame show(Stage stage, WindowFrame frame) {
        WindowViewModels desk = frame.desk();
        stage.show();
        size(stage);
        frame.focusBox();
        PeriodicTask looking =
                new PeriodicTask(LOOK_MILLISECONDS, () -> desk.session().lookForOtherChanges());
        looking.start();
        stage.setOnHidden(event -> looking.stop());
        return frame.welcomeUnless(desk.remembered().hintClosed());
    }
}
