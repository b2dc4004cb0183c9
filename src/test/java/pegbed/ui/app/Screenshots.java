package pegbed.ui.app;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.event.ActionEvent;
import javafx.scene.Scene;
import javafx.scene.SnapshotParameters;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TabPane;
import javafx.scene.control.TextField;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.transform.Transform;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import pegbed.model.Day;
import pegbed.model.DayEvent;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.session.Answer;
import pegbed.session.Session;
import pegbed.session.VisitedPegs;
import pegbed.storage.disk.PegFile;
import pegbed.ui.controls.FileChoice;

/**
 * Makes the documentation's pictures of the window, with the window's own code and without a display: {@code mvn -P run
 * test-compile exec:exec -Drun.main=pegbed.ui.app.Screenshots}. The one at 200 % needs a display of 1920 × 1080,
 * {@code -Dpegbed.real=true} and {@code -Dglass.gtk.uiScale=200%}.
 */
public final class Screenshots {
    private static final Path OUT = Path.of("docs", "images");

    /** Only the pictures whose names contain this, all if it is empty. */
    private static final String ONLY = System.getProperty("pegbed.only", "");

    private Screenshots() {}

    public static void main(String[] args) throws Exception {
        Headless.set();
        CountDownLatch up = new CountDownLatch(1);
        Platform.startup(up::countDown);
        up.await();
        Platform.setImplicitExit(false);
        Files.createDirectories(OUT);
        if (Boolean.getBoolean("pegbed.real")) {
            // On a display of twice the pixels a point, with -Dglass.gtk.uiScale=200%.
            take("window-200-percent.png", 960, 540, 2, false, frame -> {});
            Platform.exit();
            return;
        }
        take("window-light.png", 1366, 740, 1, false, frame -> {});
        take("window-dark.png", 1366, 740, 1, true, frame -> {});
        take("window-200-percent.png", 960, 510, 2, false, frame -> {});
        take("window-bankside.png", 1280, 752, 1, false, WindowFrame::toBankside);
        take("window-readings.png", 1366, 740, 1, false, frame -> tab(frame, 3));
        take("window-lines.png", 1366, 740, 1, false, frame -> tab(frame, 1));
        take("window-fishing.png", 1366, 740, 1, false, Screenshots::fished, frame -> tab(frame, 2));
        take("window-visits.png", 1366, 740, 1, false, Screenshots::visits);
        take("window-compare.png", 1366, 740, 1, false, Screenshots::dugOut, Screenshots::compare);
        take("window-joined-up.png", 1366, 740, 1, false, frame -> {
            frame.main().map().joinedUpProperty().set(true);
            frame.main().map().legendProperty().set(true);
        });
        take("window-shelf.png", 1366, 740, 1, false, Screenshots::shelf);
        take("window-place.png", 1366, 740, 1, false, frame -> {
            tab(frame, 5);
            frame.main().map().requestFocus();
        });
        take("window-new-peg.png", 1366, 740, 1, false, WindowFrame::newPeg);
        take("window-rigs.png", 1366, 740, 1, false, Screenshots::rigs);
        take("window-first-start.png", 960, 510, 1, false, frame -> frame.welcomeUnless(false));
        Platform.exit();
    }

    /** A third visit to peg 9, with one check read. */
    private static void visits(WindowFrame frame) {
        tab(frame, 4);
        frame.desk().visits().begin();
        frame.desk().box().textProperty().set("s3 @leaning 5'5");
        frame.desk().box().enter();
    }

    /** A third visit to peg 9 that found a hole. */
    private static void dugOut(WindowFrame frame) throws InputException {
        tab(frame, 4);
        frame.desk().document().begin(VisitedPegs.dugOut());
    }

    private static void compare(WindowFrame frame) {
        frame.desk().comparison().compare();
        frame.desk().map().point(VisitedPegs.HOLE);
    }

    /** What stands lowest can be scrolled to only once all of it is there. */
    private static void scrollDown(WindowFrame frame) {
        ScrollPane visits = (ScrollPane) frame.lookup("#visits");
        if (visits != null && !frame.desk().comparison().places().isEmpty()) {
            visits.setVvalue(1);
        }
    }

    /** The folder lies in an archive, so that its path in the picture is no machine's. */
    private static void shelf(WindowFrame frame) throws IOException {
        Path archive = Files.createTempDirectory("pegbed-pictures").resolve("pegs.zip");
        FileSystem files = FileSystems.newFileSystem(archive, Map.of("create", "true"));
        Path pegs = Files.createDirectories(files.getPath("/home/angler/My pegs"));
        for (String name : List.of("tansy-cut-14", "tansy-cut-9", "hobbrel-pond-3")) {
            Path copy = pegs.resolve(name + ".peg.json");
            Files.copy(Path.of("sample-pegs", name + ".peg.json"), copy, StandardCopyOption.REPLACE_EXISTING);
        }
        frame.showShelf();
        frame.shelf().choose(pegs);
    }

    /** Four minutes after the last that happened on the sample peg's latest visit. */
    private static final Clock FISHED = Clock.fixed(Instant.parse("2026-10-24T13:39:00Z"), ZoneOffset.UTC);

    /** The sample peg with visits, the latest of which goes on. */
    private static void fished(WindowFrame frame) throws InputException {
        Peg peg = PegFile.read(Path.of("sample-pegs/sallow-cut-5.peg.json")).peg();
        frame.desk()
                .document()
                .begin(peg.withToday(visit -> visit.withDay(new Day(
                        visit.day().conditions(),
                        visit.day().events().stream()
                                .filter(event -> event.kind() != DayEvent.Kind.STOP)
                                .toList()))));
    }

    private static void tab(WindowFrame frame, int index) {
        ((TabPane) frame.lookup("#tabs")).getSelectionModel().select(index);
    }

    private static void rigs(WindowFrame frame) {
        tab(frame, 1);
        frame.showRigs();
        frame.applyCss();
        frame.layout();
        TextField hookLength = (TextField) frame.lookup("#rig-2-hook-length");
        hookLength.setText("4 inchs");
        hookLength.fireEvent(new ActionEvent());
    }

    private interface Setting {
        void set(WindowFrame frame) throws Exception;
    }

    private static void take(String name, int width, int height, int scale, boolean dark, Setting setting)
            throws Exception {
        take(name, width, height, scale, dark, setting, Screenshots::typing);
    }

    /** A reading about to be added. */
    private static void typing(WindowFrame frame) {
        frame.desk().box().textProperty().set("s7 @post+1 2'9 firm");
        frame.focusBox();
        frame.desk().map().point(pegbed.model.Place.polar(9.4, 14));
    }

    private static void take(
            String name, int width, int height, int scale, boolean dark, Setting setting, Setting afterwards)
            throws Exception {
        if (!name.contains(ONLY)) {
            return;
        }
        Path home = Files.createTempDirectory("pegbed-pictures");
        Session.Executors executors = new Session.Executors(
                Platform::runLater, WindowViewModels.thread("answers"), WindowViewModels.thread("disk"));
        WindowFrame[] frame = new WindowFrame[1];
        WindowViewModels desk = onToolkit(() -> {
            WindowViewModels made = WindowViewModels.of(
                    home,
                    executors,
                    WindowViewModels.thread("painter"),
                    WindowViewModels.thread("plans"),
                    WindowViewModels.thread("guide"),
                    name.contains("fishing") ? FISHED : VisitedPegs.MORNING);
            made.remembered().closeHint();
            Stage stage = new Stage();
            frame[0] = PegbedApplication.show(stage, made, new NoFiles(), dark);
            stage.setWidth(width);
            stage.setHeight(height);
            made.document().begin(SamplePegFiles.first());
            return made;
        });
        waitFor(desk, frame[0]);
        onToolkit(() -> {
            setting.set(frame[0]);
            return null;
        });
        waitFor(desk, frame[0]);
        onToolkit(() -> {
            afterwards.set(frame[0]);
            return null;
        });
        Thread.sleep(400);
        waitFor(desk, frame[0]);
        onToolkit(() -> {
            scrollDown(frame[0]);
            return null;
        });
        Thread.sleep(400);
        onToolkit(() -> {
            write(frame[0].getScene(), scale, OUT.resolve(name));
            frame[0].getScene().getWindow().hide();
            return null;
        });
    }

    private static void waitFor(WindowViewModels desk, WindowFrame frame) throws Exception {
        int calm = 0;
        for (int i = 0; i < 600; i++) {
            boolean there = onToolkit(() -> desk.session().answer() instanceof Answer.Ready
                    && frame.main().map().settled()
                    && desk.profile().profileProperty().get().isPresent());
            calm = there ? calm + 1 : 0;
            if (calm > 10) {
                return;
            }
            Thread.sleep(50);
        }
        throw new IllegalStateException("The map did not come.");
    }

    static void write(Scene scene, int scale, Path path) throws IOException {
        SnapshotParameters parameters = new SnapshotParameters();
        parameters.setTransform(Transform.scale(scale, scale));
        WritableImage image = scene.getRoot().snapshot(parameters, null);
        int width = (int) image.getWidth();
        int height = (int) image.getHeight();
        int[] pixels = new int[width * height];
        image.getPixelReader().getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        picture.setRGB(0, 0, width, height, pixels, 0, width);
        ImageIO.write(picture, "png", path.toFile());
    }

    private interface Work<T> {
        T run() throws Exception;
    }

    private static <T> T onToolkit(Work<T> work) throws Exception {
        FutureTask<T> task = new FutureTask<>(work::run);
        Platform.runLater(task);
        return task.get(60, TimeUnit.SECONDS);
    }

    /** Chooses no file. */
    static final class NoFiles implements FileChoice {
        @Override
        public Optional<Path> toOpen(Optional<Path> folder) {
            return Optional.empty();
        }

        @Override
        public Optional<Path> toSave(String suggested, Optional<Path> folder) {
            return Optional.empty();
        }

        @Override
        public Optional<Path> toSaveCard(String suggested, Optional<Path> folder) {
            return Optional.empty();
        }

        @Override
        public Optional<Path> toFolder(String title) {
            return Optional.empty();
        }

        @Override
        public Optional<Path> toExport(String suggested) {
            return Optional.empty();
        }

        @Override
        public Optional<Path> toBringIn() {
            return Optional.empty();
        }
    }
}
