package pegbed.reliability;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.IntFunction;
import pegbed.model.InputException;
import pegbed.model.SoundingLog;
import pegbed.session.Pegs;
import pegbed.storage.disk.PegFile;
import pegbed.storage.peg.PegWriter;
import pegbed.storage.table.BanksTable;
import pegbed.storage.table.LogTable;
import pegbed.storage.table.ReadingsTable;

/** Files far larger than any honest one: each is read, in whole or in part, or refused with a sentence. */
final class LargeFiles {
    private static final int MILLION = 1_000_000;

    private interface Reader {
        Object read(Path file) throws InputException;
    }

    private final Path folder;
    private final Map<String, String> answers = new LinkedHashMap<>();

    private LargeFiles(Path folder) {
        this.folder = folder;
    }

    /** What each was answered with. */
    static Map<String, String> run(Path folder) throws IOException {
        LargeFiles run = new LargeFiles(folder);
        String peg = PegWriter.text(Pegs.plumbed(3));
        String point = "{\"x_m\": 1, \"y_m\": 0.5}";
        run.read("a million bank points", "a.peg.json", PegFile::read, out -> {
            int at = peg.indexOf("\"near_bank\": [") + "\"near_bank\": [".length();
            out.write(peg.substring(0, at));
            rows(out, i -> point + ",\n", MILLION);
            out.write(peg.substring(at));
        });
        run.read("a million bank points in a table", "b.csv", BanksTable::read, out -> {
            out.write("bank,x_m,y_m\n");
            rows(out, i -> "near," + i % 100 + ",0.5\n", MILLION);
        });
        run.read("a million islands in a table", "c.csv", BanksTable::read, out -> {
            out.write("bank,x_m,y_m\n");
            rows(out, i -> "island" + i % 999_999 + "," + i % 100 + ",0.5\n", MILLION);
        });
        run.read("three million readings in a table", "d.csv", ReadingsTable::read, out -> {
            out.write("distance_m,angle_deg,depth_m\n");
            rows(out, i -> "5," + i % 60 + ",1\n", 3 * MILLION);
        });
        run.read("four million soundings in a log", "j.csv", LargeFiles::log, out -> {
            out.write("x_m,y_m,depth_m\n");
            rows(out, i -> i % 2000 + "," + i / 2000 + ",1\n", 4 * MILLION);
        });
        run.read("five million soundings in a log", "k.csv", LargeFiles::log, out -> {
            out.write("x_m,y_m,depth_m\n");
            rows(out, i -> i % 2000 + "," + i / 2000 + ",1\n", 5 * MILLION);
        });
        run.read("a cell of 200 MB in a log", "l.csv", LargeFiles::log, out -> {
            out.write("x_m,y_m,depth_m,note\n5,0,1,\"");
            rows(out, i -> "x".repeat(200), MILLION);
        });
        run.read("a note of 100 MB", "e.peg.json", PegFile::read, out -> {
            out.write("{\"format\": \"pegbed-peg\", \"version\": 1, \"venue\": \"");
            rows(out, i -> "x".repeat(100), MILLION);
            out.write("\"}");
        });
        run.read("a cell of 100 MB", "f.csv", ReadingsTable::read, out -> {
            out.write("distance_m,angle_deg,depth_m,note\n5,0,1,\"");
            rows(out, i -> "x".repeat(100), MILLION);
            out.write("\"\n");
        });
        run.read("ten million brackets", "g.peg.json", PegFile::read, out -> {
            out.write("{\"format\": \"pegbed-peg\", \"visits\": ");
            rows(out, i -> "[[[[[[[[[[", MILLION);
        });
        run.read("a million columns", "h.csv", ReadingsTable::read, out -> rows(out, i -> "c" + i + ",", MILLION));
        run.read(
                "300 MB of blank lines",
                "i.csv",
                ReadingsTable::read,
                out -> rows(out, i -> "\n".repeat(300), MILLION));
        return run.answers;
    }

    private static LogTable log(Path file) throws InputException {
        return LogTable.read(file, SoundingLog.BOAT_SD_METRES);
    }

    private interface Filling {
        void into(BufferedWriter out) throws IOException;
    }

    private static void rows(BufferedWriter out, IntFunction<String> row, int count) throws IOException {
        for (int i = 0; i < count; i++) {
            out.write(row.apply(i));
        }
    }

    private void read(String what, String name, Reader reader, Filling filling) throws IOException {
        Path file = folder.resolve(name);
        try (BufferedWriter out = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
            filling.into(out);
        }
        try {
            answers.put(what, "read: " + reader.read(file).getClass().getSimpleName());
        } catch (InputException declared) {
            String sentence = declared.getMessage();
            if (sentence.length() > 2_000) {
                throw new AssertionError("Not one sentence for " + what, declared);
            }
            answers.put(what, sentence);
        }
        Files.delete(file);
    }
}
