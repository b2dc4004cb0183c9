package pegbed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Command;

class UnexpectedErrorTest {
    @TempDir
    Path folder;

    @Command(name = "broken")
    private static final class Broken implements Callable<Integer> {
        private final Throwable error;

        Broken(Throwable error) {
            this.error = error;
        }

        @Override
        public Integer call() throws Exception {
            if (error instanceof Error serious) {
                throw serious;
            }
            throw (Exception) error;
        }
    }

    private void assertLogged(Throwable error) throws IOException {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        PrintStream stream = new PrintStream(err, true, StandardCharsets.UTF_8);
        int status = Cli.run(new CommandLine(new Broken(error)), new String[0], stream, stream, folder);
        assertEquals(2, status);
        Path log = folder.resolve("pegbed-0.log");
        assertEquals(
                "This command stopped at an error of the program's own; what went wrong is in the log " + log + "."
                        + System.lineSeparator(),
                err.toString(StandardCharsets.UTF_8));
        String text = Files.readString(log);
        assertTrue(text.contains(error.toString()), text);
        assertTrue(text.contains("at pegbed.cli.UnexpectedErrorTest"), text);
    }

    @Test
    void anUnexpectedExceptionIsOneSentenceAndATraceInTheLog() throws IOException {
        assertLogged(new IllegalStateException("nobody thought of this"));
    }

    @Test
    void soIsAnErrorOfTheMachine() throws IOException {
        assertLogged(new StackOverflowError("too deep"));
    }

    @Test
    void theVersionIsThePoms() throws IOException {
        Matcher pom = Pattern.compile("<artifactId>pegbed</artifactId>\\s*<version>([^<]+)</version>")
                .matcher(Files.readString(Path.of("pom.xml")));
        assertTrue(pom.find());
        Ran ran = Ran.pegbed("--version");
        assertEquals("pegbed " + pom.group(1), ran.out().strip(), ran.err());
        assertEquals(0, ran.status());
    }
}
