package pegbed.bench.speed;

import com.sun.management.OperatingSystemMXBean;
import java.io.BufferedWriter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import pegbed.cli.Cli;
import pegbed.model.SoundingLog;

/**
 * How long the log of a whole lake takes, from the file with 1,000 to 1,000,000 soundings to the file with 205,000
 * nodes, depth and doubt. Each runs once, after one small one that warms the machine up.
 */
public final class LakeBench {
    private static final int[] COUNTS = {1_000, 10_000, 100_000, 1_000_000};

    private LakeBench() {}

    public static void main(String[] args) throws IOException {
        OperatingSystemMXBean system = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        PrintStream out = System.out;
        out.printf(
                Locale.ROOT,
                "%d cores, load %.1f before, heap at most %d MB%n%n",
                system.getAvailableProcessors(),
                system.getSystemLoadAverage(),
                Runtime.getRuntime().maxMemory() >> 20);
        out.println("| soundings | nodes | time, s | processor, s | peak heap, MB |");
        out.println("|---|---|---|---|---|");
        Path folder = Files.createTempDirectory("lake");
        Path grid = folder.resolve("grid.csv");
        double[] cpu = new double[COUNTS.length];
        depths(written(InventedLake.tracked(COUNTS[0], 1), folder.resolve("warm.csv")), grid);
        for (int i = 0; i < COUNTS.length; i++) {
            Path log = written(InventedLake.tracked(COUNTS[i], 2), folder.resolve("log" + COUNTS[i] + ".csv"));
            System.gc();
            heapPools().forEach(MemoryPoolMXBean::resetPeakUsage);
            long start = System.nanoTime();
            long startCpu = system.getProcessCpuTime();
            depths(log, grid);
            double seconds = (System.nanoTime() - start) / 1e9;
            cpu[i] = (system.getProcessCpuTime() - startCpu) / 1e9;
            long heap =
                    heapPools().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum();
            try (var lines = Files.lines(grid)) {
                out.printf(
                        Locale.ROOT,
                        "| %,d | %,d | %.1f | %.1f | %d |%n",
                        COUNTS[i],
                        lines.count() - 1,
                        seconds,
                        cpu[i],
                        heap >> 20);
            }
        }
        out.printf(
                Locale.ROOT,
                "%nProcessor time from 10,000 to 1,000,000 grows as the number to the power of %.2f.%nLoad %.1f after.%n",
                Math.log(cpu[3] / cpu[1]) / Math.log(100),
                system.getSystemLoadAverage());
        try (var files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(folder);
    }

    private static java.util.stream.Stream<MemoryPoolMXBean> heapPools() {
        return ManagementFactory.getMemoryPoolMXBeans().stream().filter(pool -> pool.getType() == MemoryType.HEAP);
    }

    private static void depths(Path log, Path grid) {
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        PrintStream to = new PrintStream(said, true, StandardCharsets.UTF_8);
        String[] words = {
            "depths", "--soundings", log.toString(), "--place-sd", "1", "--grid", "5", "--out", grid.toString()
        };
        if (Cli.run(words, to, to) != 0) {
            throw new IllegalStateException(said.toString(StandardCharsets.UTF_8));
        }
    }

    private static Path written(SoundingLog log, Path path) throws IOException {
        try (BufferedWriter out = Files.newBufferedWriter(path)) {
            out.write("x_m,y_m,depth_m\n");
            for (int i = 0; i < log.size(); i++) {
                out.write(String.format(
                        Locale.ROOT, "%.2f,%.2f,%.2f%n", log.xMetres(i), log.yMetres(i), log.depthMetres(i)));
            }
        }
        return path;
    }
}
