package pegbed.reliability;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pegbed.geometry.PegWater;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.SoundingLog;
import pegbed.notation.Entry;
import pegbed.notation.Line;
import pegbed.notation.Notation;
import pegbed.session.Pegs;
import pegbed.storage.disk.HostileJournal;
import pegbed.storage.peg.Opened;
import pegbed.storage.peg.PegReader;
import pegbed.storage.peg.PegWriter;
import pegbed.storage.table.BanksTable;
import pegbed.storage.table.LogTable;
import pegbed.storage.table.PointsTable;
import pegbed.storage.table.ReadingsTable;
import pegbed.wording.TypedLineWords;

/** What comes in from outside, honest examples of it, and what reads it. */
enum Input {
    PEG {
        @Override
        List<byte[]> corpus() throws IOException {
            List<byte[]> corpus = samples();
            corpus.add(PegWriter.bytes(Pegs.plumbed(3)));
            corpus.add(PegWriter.bytes(Peg.EMPTY));
            return corpus;
        }

        @Override
        void read(byte[] bytes) throws InputException {
            comesBackTheSame(PegReader.read("nine.peg.json", bytes));
        }
    },
    JOURNAL {
        @Override
        List<byte[]> corpus() {
            byte[] one = HostileJournal.of(Pegs.plumbed(2));
            byte[] two = HostileJournal.of(Pegs.plumbed(3));
            byte[] both = new byte[one.length + two.length];
            System.arraycopy(one, 0, both, 0, one.length);
            System.arraycopy(two, 0, both, one.length, two.length);
            return List.of(one, both);
        }

        @Override
        void read(byte[] bytes) throws InputException {
            Optional<Opened> last = HostileJournal.last(bytes);
            if (last.isPresent()) {
                comesBackTheSame(last.get());
            }
        }
    },
    READINGS {
        @Override
        List<byte[]> corpus() {
            return texts(
                    "distance_m,angle_deg,depth_m,bottom,note\n11.5,-20,1.37,silt,\"soft, \"\"deep\"\"\"\n2,0,0.6,,\n",
                    "distance_ft;angle_deg;depth_in\n36,5;-20;54\n11;3;12\n",
                    ReadingsTable.write(Pegs.plumbed(20).readings()));
        }

        @Override
        void read(byte[] bytes) throws InputException {
            ReadingsTable table = ReadingsTable.read(new StringReader(text(bytes)), "readings.csv");
            String written = ReadingsTable.write(table.readings());
            String again = ReadingsTable.write(
                    ReadingsTable.read(new StringReader(written), "again.csv").readings());
            if (!written.equals(again)) {
                throw new AssertionError("The table comes back otherwise: " + written);
            }
        }
    },
    BANKS {
        @Override
        List<byte[]> corpus() {
            return texts(
                    "bank,x_m,y_m\nnear,-5,0.5\nnear,5,0.6\nfar,-5,13\nfar,5,13.2\nisland,0,6\nisland,1,7\nisland,-1,7\n",
                    "bank;x_ft;y_ft\nnear;-15;1,5\nnear;15;2\nisland2;0;18\nisland2;3;21\nisland2;-3;21\n");
        }

        @Override
        void read(byte[] bytes) throws InputException {
            BanksTable.read(new StringReader(text(bytes)), "banks.csv");
        }
    },
    POINTS {
        @Override
        List<byte[]> corpus() {
            return texts("x_m,y_m\n0,5\n1,6\n", "x_cm\ty_cm\n10\t500\n");
        }

        @Override
        void read(byte[] bytes) throws InputException {
            PointsTable.read(new StringReader(text(bytes)), "points.csv");
        }
    },
    LOG {
        @Override
        List<byte[]> corpus() {
            String track = IntStream.range(0, 200)
                    .mapToObj(i -> i % 40 + ".25," + i / 40 + "," + (1 + i % 7 / 10.0) + "\n")
                    .collect(Collectors.joining());
            return texts(
                    "x_m,y_m,depth_m\n-2.5,11.5,1.37\n0,5,\"1,2\"\n\n1,6,0.9\n",
                    "distance_ft;angle_deg;depth_in;time\n36,5;-20;54;\"06:05\"\n11;3;12;\n",
                    "depth_cm\ty_m\tx_m\n137\t5934220.5\t512345.25\n",
                    "x_m,y_m,depth_m\n" + track);
        }

        @Override
        void read(byte[] bytes) throws InputException {
            SoundingLog log = LogTable.read(new ByteArrayInputStream(bytes), "log.csv", 2.5)
                    .log();
            for (int i = 0; i < log.size(); i++) {
                double depth = log.depthMetres(i);
                if (!(depth >= 0 && depth <= SoundingLog.DEEPEST_METRES)
                        || !Double.isFinite(log.xMetres(i))
                        || !Double.isFinite(log.yMetres(i))) {
                    throw new AssertionError("No sounding: " + log.xMetres(i) + ", " + log.yMetres(i) + ", " + depth);
                }
            }
        }
    },
    NOTATION {
        private final Peg peg = Pegs.plumbed(2);
        private final Notation notation = Notation.of(peg);

        @Override
        List<byte[]> corpus() {
            return texts(
                    "11 20L 4'6 silt soft here",
                    "s6+0.5 11:30 2'9 firm",
                    "36ft @post+1 5ft 6in",
                    "11m -20 1.68m",
                    "edge 13 20L 1'6",
                    "snag 9 20R 0.5 branch",
                    "s6 @leaning post-3deg 66in gravel",
                    "11,5 -20 5.5ft");
        }

        @Override
        void read(byte[] bytes) throws InputException {
            Line line = notation.parse(text(bytes));
            TypedLineWords.of(peg).understood(line);
            PegWriter.text(Entry.in(peg, line));
        }
    },
    WATER {
        @Override
        List<byte[]> corpus() throws IOException {
            return PEG.corpus();
        }

        @Override
        void read(byte[] bytes) throws InputException {
            PegWater.of(PegReader.read("nine.peg.json", bytes).peg());
        }
    };

    /** Honest examples. */
    abstract List<byte[]> corpus() throws IOException;

    /** Reads it as the program does; any other exception than the declared one is a fault, and so is an error. */
    abstract void read(byte[] bytes) throws InputException;

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    private static List<byte[]> texts(String... texts) {
        return Stream.of(texts)
                .map(text -> text.getBytes(StandardCharsets.UTF_8))
                .toList();
    }

    private static List<byte[]> samples() throws IOException {
        List<byte[]> samples = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("sample-pegs"))) {
            for (Path file : files.sorted().toList()) {
                samples.add(Files.readAllBytes(file));
            }
        }
        return samples;
    }

    /** Whatever was taken in can be saved and read again, and is the same then. */
    private static void comesBackTheSame(Opened opened) throws InputException {
        byte[] written = PegWriter.bytes(opened.peg());
        Opened again = PegReader.read("again.peg.json", written);
        if (!(again instanceof Opened.Whole)) {
            throw new AssertionError("What was recovered can't be read again: " + ((Opened.Recovered) again).why());
        }
        if (!PegWriter.text(again.peg()).equals(text(written))) {
            throw new AssertionError("What was recovered comes back otherwise.");
        }
    }
}
