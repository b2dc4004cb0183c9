package pegbed.ui.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import pegbed.model.InputException;
import pegbed.report.drawing.Lettering;
import pegbed.report.paint.LetterOutlines;

/**
 * The desk and its first peg, made ready while the toolkit starts, so that the first picture is there sooner
 * ({@code docs/decisions/0004-a-quick-window.md}). Lines, rigs and the next reading wait for that picture: they are
 * worked out behind it.
 */
final class StartUp {
    private static final int LONGEST_WAIT_SECONDS = 10;

    private final OwnerHandover owner;
    private final Future<WindowViewModels> desk;
    private final Runnable firstShown;
    private final CountDownLatch picture = new CountDownLatch(1);

    /**
     * Begins at once, on threads of its own.
     *
     * @param folder the program's own folder
     * @param toolkit does the owner's work once {@link #takeOver} has returned
     * @param firstShown is run when the first picture is there
     * @param files the peg file to open, or none
     */
    StartUp(Path folder, Executor toolkit, Runnable firstShown, List<String> files) {
        this.firstShown = firstShown;
        owner = new OwnerHandover(toolkit);
        desk = owner.bring(() -> {
            ExecutorService painter = WindowViewModels.thread("painter");
            // The first letters take long.
            painter.execute(() -> LetterOutlines.MEASURE.widthPoints("0", new Lettering(8.5, false, false)));
            WindowViewModels made = WindowViewModels.of(
                    folder,
                    WindowViewModels.executors(owner, painter),
                    painter,
                    behindThePicture("plans"),
                    WindowViewModels.behind(painter, behindThePicture("guide")),
                    Clock.system(ZoneId.systemDefault()));
            openFirst(made, files);
            return made;
        });
    }

    private ExecutorService behindThePicture(String name) {
        ExecutorService thread = WindowViewModels.thread(name);
        thread.execute(() -> {
            try {
                picture.await(LONGEST_WAIT_SECONDS, TimeUnit.SECONDS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        });
        return thread;
    }

    /** The desk, for the toolkit's thread, which owns it from now on. */
    WindowViewModels takeOver() {
        try {
            WindowViewModels made = desk.get();
            owner.takeOver();
            return made;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("The start was broken off.", e);
        } catch (ExecutionException e) {
            throw new IllegalStateException("The window could not begin.", e);
        }
    }

    /** The first picture is there; what waited for it goes on. */
    void pictureIsThere() {
        picture.countDown();
        firstShown.run();
    }

    /** The file that was asked for; else what an earlier run left unsaved, the last file, or the sample. */
    private static void openFirst(WindowViewModels desk, List<String> files) {
        if (!files.isEmpty()) {
            desk.document().open(Path.of(files.get(0)));
            return;
        }
        desk.session().takeUpLeftBehind(() -> {
            List<Path> recent = desk.document().recent();
            if (!recent.isEmpty() && Files.isRegularFile(recent.get(0))) {
                desk.document().open(recent.get(0));
                return;
            }
            try {
                desk.document().begin(SamplePegFiles.first());
            } catch (InputException e) {
                desk.document().refuse(e.getMessage());
            }
        });
    }
}
