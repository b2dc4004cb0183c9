package pegbed.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever the person's language and machine, a command answers the same, or says what it could not do. */
class EnvironmentTest {
    private static final Path SAMPLE = Path.of("sample-pegs", "tansy-cut-14.peg.json");

    @TempDir
    private Path folder;

    /** What commands say and write; places that stand in the answers are the same each time. */
    private List<byte[]> answers() throws IOException {
        Path peg = folder.resolve("peg.peg.json");
        Files.copy(SAMPLE, peg);
        List<byte[]> answers = new ArrayList<>();
        for (List<String> words : List.of(
                List.of("add", peg.toString(), "6.25m 11 1.35m silt"),
                List.of("add", peg.toString(), "7m 10:30 1.35m"),
                List.of("check", peg.toString()),
                List.of("lines", peg.toString()),
                List.of("lines", peg.toString(), "--json"),
                List.of("level", peg.toString()),
                List.of("shelf", folder.toString()),
                List.of(
                        "map",
                        peg.toString(),
                        "--out",
                        folder.resolve("map.svg").toString()),
                List.of(
                        "card",
                        peg.toString(),
                        "--out",
                        folder.resolve("card.html").toString()),
                List.of("lines", peg.toString(), "--track", "99"),
                List.of("lines", peg.toString(), "--target", "deep"),
                List.of("add", peg.toString(), "6.25m 400 1.35m"))) {
            Ran ran = Ran.pegbed(words.toArray());
            answers.add((ran.status() + ran.out() + ran.err()).getBytes(StandardCharsets.UTF_8));
        }
        for (String file : List.of("peg.peg.json", "map.svg", "card.html")) {
            answers.add(Files.readAllBytes(folder.resolve(file)));
            Files.delete(folder.resolve(file));
        }
        return answers;
    }

    @ParameterizedTest
    @ValueSource(strings = {"ar-SA-u-nu-arab", "hi-IN-u-nu-deva", "th-TH-u-nu-thai", "tr-TR", "de-DE"})
    void theLanguageChangesNoByte(String tag) throws IOException {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.UK);
            List<byte[]> usual = answers();
            Locale.setDefault(Locale.forLanguageTag(tag));
            List<byte[]> theirs = answers();
            for (int i = 0; i < usual.size(); i++) {
                assertArrayEquals(usual.get(i), theirs.get(i), new String(theirs.get(i), StandardCharsets.UTF_8));
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void anAnswerThatCannotBeWrittenIsSaid() {
        PrintStream full = new PrintStream(new OutputStream() {
            @Override
            public void write(int octet) throws IOException {
                throw new IOException("No space left on device");
            }
        });
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = Cli.run(
                new String[] {"lines", SAMPLE.toString()},
                full,
                new PrintStream(err, true, StandardCharsets.UTF_8),
                folder);
        assertEquals(2, status);
        assertEquals(
                "Not all of the answer could be written to standard output: its disk is full, or it is closed."
                        + " What the command was to do to files is done.",
                err.toString(StandardCharsets.UTF_8).strip());
    }

    @Test
    @Tag("slow")
    void picturesNeedNoDisplay() throws IOException, InterruptedException {
        for (String command : List.of("map", "card")) {
            Path picture = folder.resolve(command + ".png");
            ProcessBuilder process = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-cp",
                            System.getProperty("java.class.path"),
                            "pegbed.Pegbed",
                            command,
                            SAMPLE.toAbsolutePath().toString(),
                            "--out",
                            picture.toString())
                    .redirectErrorStream(true);
            process.environment().put("DISPLAY", ":4711");
            Process started = process.start();
            String said = new String(started.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertEquals(0, started.waitFor(), said);
            assertTrue(Files.size(picture) > 1000, said);
        }
    }
}
