package pegbed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ServiceLoader;
import org.junit.jupiter.api.Test;

class LibraryMessagesTest {
    private final System.Logger logger = new LibraryMessages().getLogger("javafx", LibraryMessages.class.getModule());

    private static String said(Runnable work) {
        PrintStream before = System.err;
        ByteArrayOutputStream caught = new ByteArrayOutputStream();
        System.setErr(new PrintStream(caught, true, StandardCharsets.UTF_8));
        try {
            work.run();
        } finally {
            System.setErr(before);
        }
        return caught.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
    }

    @Test
    void javaFindsIt() {
        assertTrue(ServiceLoader.load(System.LoggerFinder.class).stream()
                .anyMatch(finder -> finder.type() == LibraryMessages.class));
    }

    @Test
    void warningsAreSaidInALine() {
        assertEquals("javafx: no face 3\n", said(() -> logger.log(System.Logger.Level.WARNING, "no face {0}", 3)));
        assertEquals(
                "javafx: lost (java.lang.IllegalStateException: why)\n",
                said(() -> logger.log(System.Logger.Level.ERROR, "lost", new IllegalStateException("why"))));
    }

    @Test
    void whatIsNoTroubleIsNot() {
        assertEquals("", said(() -> logger.log(System.Logger.Level.INFO, "hello")));
        assertEquals(
                "",
                said(() -> logger.log(
                        System.Logger.Level.WARNING,
                        "Unsupported JavaFX configuration: classes were loaded from 'unnamed module'")));
        assertFalse(logger.isLoggable(System.Logger.Level.OFF));
    }
}
