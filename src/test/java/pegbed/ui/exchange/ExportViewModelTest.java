package pegbed.ui.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.InputException;
import pegbed.plan.Plan;
import pegbed.storage.disk.ProgramLog;
import pegbed.ui.app.Desks;
import pegbed.ui.app.SamplePegFiles;

class ExportViewModelTest {
    @TempDir
    private Path folder;

    private final Queue<Runnable> work = new ArrayDeque<>();
    private final List<String> news = new ArrayList<>();

    private Plan plan() throws InputException {
        return Desks.atOnce(folder, SamplePegFiles.first())
                .plan()
                .planProperty()
                .get()
                .orElseThrow();
    }

    @Test
    void theLastExportThatIsAskedForIsWritten() throws InputException {
        Plan plan = plan();
        ExportViewModel exporting = new ExportViewModel(work::add, Runnable::run, new ProgramLog(folder), news::add);
        exporting.export(plan, folder.resolve("first.geojson"));
        exporting.export(plan, folder.resolve("second.geojson"));
        while (!work.isEmpty()) {
            work.remove().run();
        }
        assertFalse(Files.exists(folder.resolve("first.geojson")));
        assertTrue(Files.exists(folder.resolve("second.geojson")));
        assertEquals(3, news.size());
        assertTrue(news.get(2).startsWith("Exported second.geojson. The peg has no position"), news.get(2));
    }

    @Test
    void anotherKindOfFileIsRefused() throws InputException {
        ExportViewModel exporting =
                new ExportViewModel(Runnable::run, Runnable::run, new ProgramLog(folder), news::add);
        exporting.export(plan(), folder.resolve("peg.dxf"));
        assertEquals("peg.dxf must end in .geojson, .gpkg, .tif or .csv.", news.get(1));
    }
}
