package pegbed.ui.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.session.Answer;
import pegbed.storage.disk.PegFile;

class StartUpTest {
    @TempDir
    private Path folder;

    private final BlockingQueue<Runnable> toolkit = new LinkedBlockingQueue<>();

    /** Does the toolkit's work until something holds. */
    private void workUntil(BooleanSupplier holds) throws InterruptedException {
        while (!holds.getAsBoolean()) {
            Runnable work = toolkit.poll(1, TimeUnit.MINUTES);
            assertTrue(work != null, "Nothing more is to be done.");
            work.run();
        }
    }

    @Test
    void theSampleIsMappedFirstAndLinesFollowThePicture() throws InterruptedException {
        StartUp beginning = new StartUp(folder, toolkit::add, () -> {}, List.of());
        WindowViewModels desk = beginning.takeOver();
        workUntil(() -> desk.session().answer() instanceof Answer.Ready);
        assertEquals("Tansy Cut, peg 9", desk.document().titleProperty().get());
        assertTrue(desk.plan().planProperty().get().isEmpty());
        beginning.pictureIsThere();
        workUntil(() -> desk.plan().planProperty().get().isPresent());
    }

    @Test
    void theFileThatIsAskedForIsOpened() throws Exception {
        Path file = folder.resolve("mine.peg.json");
        PegFile.save(file, SamplePegFiles.first(), Optional.empty());
        WindowViewModels desk = new StartUp(folder, toolkit::add, () -> {}, List.of(file.toString())).takeOver();
        workUntil(() -> desk.session().file().isPresent());
        assertEquals(file, desk.session().file().get());
    }
}
