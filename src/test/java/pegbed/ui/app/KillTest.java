package pegbed.ui.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.InputException;
import pegbed.model.Reading;
import pegbed.session.Pegs;
import pegbed.session.Session;
import pegbed.storage.disk.PegFile;

/** A real process, killed fifteen times at random moments, loses nothing that it had confirmed. */
@Tag("slow")
class KillTest {
    private static final int KILLS = 15;

    @TempDir
    private Path folder;

    @Test
    void nothingThatWasConfirmedIsLost() throws IOException, InterruptedException, InputException {
        Random random = new Random(20260613);
        Path own = folder.resolve("own");
        Path file = folder.resolve("nine.peg.json");
        PegFile.save(file, Pegs.bare(), Optional.empty());
        int confirmed = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            Process process = start(own, file);
            confirmed = confirmUntilKilled(process, confirmed, random);
            assertKept(own, file, confirmed);
        }
        assertTrue(confirmed >= KILLS, "only " + confirmed + " readings were confirmed in all");
    }

    private static Process start(Path own, Path file) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-Xshare:auto",
                        "-Xmx256m",
                        "-cp",
                        System.getProperty("java.class.path"),
                        KilledWindow.class.getName(),
                        own.toString(),
                        file.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    /** Waits for one confirmation, then kills after up to 60 ms more; reads all that had been confirmed by then. */
    private static int confirmUntilKilled(Process process, int before, Random random)
            throws IOException, InterruptedException {
        int confirmed = before;
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.US_ASCII))) {
            String first = lines.readLine();
            assertTrue(first != null, "the process ended before anything was confirmed");
            confirmed = Integer.parseInt(first);
            Thread.sleep(random.nextInt(60));
            // By its handle, as the process itself would close what it had written too.
            process.toHandle().destroyForcibly();
            assertTrue(process.waitFor(1, TimeUnit.MINUTES));
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                confirmed = Integer.parseInt(line);
            }
        }
        return confirmed;
    }

    private static void assertKept(Path own, Path file, int confirmed) {
        Session session = new Session(
                own.resolve("journals"),
                new Session.Executors(Runnable::run, work -> {}, Runnable::run),
                InstantSource.system());
        session.open(file, sentence -> fail(sentence));
        List<Reading> readings = session.peg().readings();
        // One more may have reached the disk before the word of it reached the reader.
        assertTrue(
                readings.size() >= confirmed && readings.size() <= confirmed + 1,
                readings.size() + " readings came back, " + confirmed + " were confirmed");
        for (int i = 0; i < readings.size(); i++) {
            assertEquals("note " + (i + 1), readings.get(i).note());
        }
        session.close(false, () -> {});
    }
}
