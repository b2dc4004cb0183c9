package pegbed.reliability;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pegbed.cli.Cli;

/**
 * Runs commands of random words, but for moves, on a folder of honest and hostile files of their own, and looks that
 * each ends with an exit status and a sentence, and that no file is made that its words do not name.
 */
final class CommandLineFuzz {
    private static final List<String> COMMANDS = List.of(
            "new",
            "add",
            "lines",
            "depths",
            "next",
            "level",
            "compare",
            "shelf",
            "check",
            "map",
            "card",
            "bench",
            "day",
            "export",
            "import",
            "position");

    private static final List<String> OPTIONS = List.of(
            "--json",
            "--help",
            "--version",
            "--target",
            "--most-lines",
            "--most-rigs",
            "--track",
            "--across",
            "--margins",
            "--short",
            "--dead-depth",
            "--readings",
            "--banks",
            "--reach",
            "--venue",
            "--replace",
            "--usual-rigs",
            "--points",
            "--soundings",
            "--grid",
            "--place-sd",
            "--out",
            "--size",
            "--scale",
            "--look",
            "--zones",
            "--grey",
            "--count",
            "--board",
            "--check",
            "--arrive",
            "--dug-out",
            "--find",
            "--duplicate",
            "--rename",
            "--delete",
            "--practice",
            "--by-itself",
            "--joined-up",
            "--add",
            "--visit",
            "--change",
            "--air",
            "--water",
            "--wind",
            "--events",
            "--table",
            "--layer",
            "--take",
            "--at",
            "--bearing",
            "--mark",
            "--accuracy",
            "--none",
            "--",
            "-",
            "-x",
            "--no-such-option");

    private static final List<String> VALUES = List.of(
            "",
            " ",
            "0",
            "-1",
            "5",
            "1e999",
            "NaN",
            "Infinity",
            "2'9",
            "1,250",
            "9".repeat(400),
            "1200x900",
            "light",
            "a/b/c",
            "//",
            "für",
            "\u202e\u001b[31m",
            "\uD83D\uDC1F",
            "\uD800",
            "%s%n",
            "@post",
            "$HOME",
            "6 0 1.2m",
            "edge 0 0",
            "edge 12 5",
            "snag 5 0 100",
            "11 -20 4'6 silt",
            "14:20 line 2 fish F1 1.5lb",
            "25:61 line 99",
            "51.5 -1.25",
            "91 181",
            "@post 51.5 -1.25",
            "\n",
            "a".repeat(5_000),
            "/dev/null",
            "/dev/full",
            "/proc/self/mem",
            "/dev/zero");

    private static final int ONE_IN_WHICH_A_PEG_IS_WHOLE = 1_000;

    private final Path folder;
    private final List<String> names;
    private final Path whole;

    private CommandLineFuzz(Path folder) throws IOException {
        this.folder = folder;
        whole = folder.resolve("whole.peg.json");
        Map<String, String> files = Map.ofEntries(
                Map.entry("empty.peg.json", ""),
                Map.entry("text.peg.json", "hello"),
                Map.entry("cut.peg.json", "{\"format\": \"pegbed-peg\", \"version\": 1, \"visits\": [{\"readings\": ["),
                Map.entry("later.peg.json", "{\"format\": \"pegbed-peg\", \"version\": 99}"),
                Map.entry("bare.peg.json", "{\"format\": \"pegbed-peg\", \"version\": 1}"),
                Map.entry("empty.csv", ""),
                Map.entry("readings.csv", "distance_m,angle_deg,depth_m\n5,0,1.2\n7,10,1.4\n"),
                Map.entry("banks.csv", "bank,x_m,y_m\nnear,-8,0.5\nnear,8,0.5\nfar,-8,12\nfar,8,12\n"),
                Map.entry("wrong.csv", "a,b\n1,2\n"),
                Map.entry("cut.geojson", "{\"type\": \"FeatureCollection\", \"features\": [{\"type\":"),
                Map.entry(
                        "points.geojson",
                        "{\"type\": \"FeatureCollection\", \"features\": [{\"type\": \"Feature\", \"properties\":"
                                + " {\"depth_m\": 1.2}, \"geometry\": {\"type\": \"Point\", \"coordinates\": [1, 51]}}]}"),
                Map.entry("text.gpkg", "hello"));
        for (Map.Entry<String, String> file : files.entrySet()) {
            Files.writeString(folder.resolve(file.getKey()), file.getValue());
        }
        Files.createDirectory(folder.resolve("folder"));
        names = new ArrayList<>(files.keySet().stream().sorted().toList());
        names.addAll(List.of("folder", "none.peg.json", "none.png", "none.svg", "none.pdf", "none.html", "none.csv"));
        names.addAll(List.of("none.geojson", "none.gpkg", "none.tif"));
    }

    /**
     * What came of it.
     *
     * @param runs how many commands were run
     * @param done how many were done, or answered no
     * @param refused how many were refused with a sentence
     */
    record Result(int runs, int done, int refused) {}

    /**
     * Runs commands.
     *
     * @param folder an empty one to run in
     * @throws AssertionError at the first that ends otherwise than it may, or makes a file that nobody named
     */
    static Result run(Path folder, int runs, long seed) throws IOException {
        CommandLineFuzz fuzz = new CommandLineFuzz(folder);
        int done = 0;
        for (int i = 0; i < runs; i++) {
            done += fuzz.one(new Random((seed + i) * 0x9E3779B97F4A7C15L)) == Cli.BAD_INPUT ? 0 : 1;
        }
        return new Result(runs, done, runs - done);
    }

    private int one(Random random) throws IOException {
        List<String> words = words(random);
        Set<String> before = files();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = Cli.run(
                words.toArray(String[]::new),
                new PrintStream(out, false, StandardCharsets.UTF_8),
                new PrintStream(err, false, StandardCharsets.UTF_8),
                folder.resolveSibling("own"));
        String said = err.toString(StandardCharsets.UTF_8);
        if (status < 0 || status > 2 || said.contains("error of the program's own") || said.contains("\tat ")) {
            throw new AssertionError(words + " ended with " + status + ": " + said);
        }
        if (status == 2 && said.isBlank()) {
            throw new AssertionError(words + " was refused without a word.");
        }
        Set<String> made = new TreeSet<>(files());
        made.removeAll(before);
        for (String file : made) {
            boolean named = words.stream()
                    .anyMatch(word -> word.startsWith(folder.toString())
                            && file.contains(Path.of(word).getFileName().toString()));
            if (!named && !words.contains("--duplicate") && !words.contains("--delete")) {
                throw new AssertionError(words + " made " + file);
            }
            Path path = folder.resolve(file);
            if (Files.isRegularFile(path)) {
                Files.delete(path);
            }
        }
        return status;
    }

    private List<String> words(Random random) throws IOException {
        List<String> words = new ArrayList<>();
        words.add(random.nextInt(20) == 0 ? value(random) : COMMANDS.get(random.nextInt(COMMANDS.size())));
        boolean peg = random.nextInt(ONE_IN_WHICH_A_PEG_IS_WHOLE) == 0;
        if (peg) {
            Files.copy(
                    Path.of("sample-pegs", "tansy-cut-14.peg.json"),
                    whole,
                    java.nio.file.StandardCopyOption.REPLACE_EXISTING);
            words.add(whole.toString());
        } else {
            Files.deleteIfExists(whole);
        }
        for (int i = random.nextInt(7); i > 0; i--) {
            words.add(
                    switch (random.nextInt(4)) {
                        case 0 -> OPTIONS.get(random.nextInt(OPTIONS.size()));
                        case 1 -> value(random);
                        case 2 ->
                            folder.resolve(names.get(random.nextInt(names.size())))
                                    .toString();
                        default -> OPTIONS.get(random.nextInt(OPTIONS.size())) + "=" + value(random);
                    });
        }
        return words;
    }

    private static String value(Random random) {
        return VALUES.get(random.nextInt(VALUES.size()));
    }

    private Set<String> files() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.map(folder::relativize).map(Path::toString).collect(Collectors.toSet());
        }
    }
}
