package pegbed.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.Reading;
import pegbed.storage.disk.AtomicFileWriter;
import pegbed.storage.disk.PegFile;

/** Commands that are given at the same moment, as scripts do. */
class SimultaneousCommandsTest {
    @TempDir
    private Path folder;

    private Path peg;

    @BeforeEach
    void tables() throws IOException {
        peg = folder.resolve("peg.peg.json");
        Files.writeString(folder.resolve("b.csv"), "bank,x_m,y_m\nnear,-9,0\nnear,9,0\nfar,-9,12\nfar,9,12\n");
        for (int i = 0; i < 8; i++) {
            Files.writeString(readings(i), "distance_m,angle_deg,depth_m\n" + (4 + i / 2.0) + ",0,1.5\n");
        }
    }

    private Path readings(int number) {
        return folder.resolve("r" + number + ".csv");
    }

    private Ran make(int number) {
        return Ran.pegbed("new", peg, "--readings", readings(number), "--banks", folder.resolve("b.csv"));
    }

    private static List<Ran> atOnce(List<Callable<Ran>> commands) throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(commands.size());
        try {
            CyclicBarrier start = new CyclicBarrier(commands.size());
            List<Future<Ran>> running = new ArrayList<>();
            for (Callable<Ran> each : commands) {
                running.add(threads.submit(() -> {
                    start.await();
                    return each.call();
                }));
            }
            List<Ran> ran = new ArrayList<>();
            for (Future<Ran> each : running) {
                ran.add(each.get());
            }
            return ran;
        } finally {
            threads.shutdown();
        }
    }

    @Test
    void ofEightThatMakeOneNameOneDoes() throws Exception {
        for (int round = 0; round < 10; round++) {
            Files.deleteIfExists(peg);
            List<Ran> ran = atOnce(IntStream.range(0, 8)
                    .<Callable<Ran>>mapToObj(number -> () -> make(number))
                    .toList());
            List<Ran> made = ran.stream().filter(each -> each.status() == 0).toList();
            assertEquals(1, made.size(), ran::toString);
            assertEquals("Made " + peg + " with 1 reading.", made.get(0).out().strip());
            double kept = PegFile.read(peg).peg().readings().get(0).place().yMetres();
            assertEquals(4 + ran.indexOf(made.get(0)) / 2.0, kept, 1e-9);
            ran.stream()
                    .filter(each -> each.status() != 0)
                    .forEach(refused -> assertEquals(
                            peg
                                    + " exists; give another name, or --replace to write over it (it is kept as an earlier"
                                    + " version).",
                            refused.err().strip()));
        }
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(10, left.count(), "eight tables of readings, one of banks, one peg");
        }
    }

    @Test
    void ofEightThatReplaceTheLastIsThereAndTheOthersAreKept() throws Exception {
        assertEquals(0, make(0).status());
        List<Ran> ran = atOnce(IntStream.range(1, 8)
                .<Callable<Ran>>mapToObj(number -> () -> Ran.pegbed(
                        "new", peg, "--readings", readings(number), "--banks", folder.resolve("b.csv"), "--replace"))
                .toList());
        assertTrue(ran.stream().allMatch(each -> each.status() == 0), ran::toString);
        assertEquals(7, PegFile.earlier(peg).size());
    }

    @Test
    void twentyReadingsAddedAtOnceAreAllKept() throws Exception {
        assertEquals(0, make(0).status());
        List<Ran> ran = atOnce(IntStream.range(0, 20)
                .<Callable<Ran>>mapToObj(
                        number -> () -> Ran.pegbed("add", peg, 5 + number * 0.25 + "m 0 1.5m note" + number))
                .toList());
        assertTrue(ran.stream().allMatch(each -> each.status() == 0), ran::toString);
        Set<String> notes =
                PegFile.read(peg).peg().readings().stream().map(Reading::note).collect(Collectors.toSet());
        for (int number = 0; number < 20; number++) {
            assertTrue(notes.contains("note" + number), notes::toString);
        }
    }

    @Test
    void whatIsRefusedLeavesNothingBesideTheFile() throws Exception {
        assertEquals(0, make(0).status());
        byte[] before = Files.readAllBytes(peg);
        assertEquals(2, Ran.pegbed("add", peg, "nonsense").status());
        assertEquals(
                2,
                Ran.pegbed("add", folder.resolve("none.peg.json"), "5m 0 1.5m").status());
        assertArrayEquals(before, Files.readAllBytes(peg));
        assertTrue(Files.notExists(folder.resolve(AtomicFileWriter.EARLIER_FOLDER)));
    }
}
