package pegbed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Arguments whose letters were lost on their way are refused. */
class ArgumentEncodingTest {
    @Test
    void lostLettersAreRefused() {
        String[] words = {"add", "peg9.peg.json", "5 0 4'6 f\uFFFD\uFFFDr"};
        String said = ArgumentEncoding.refusal(words, "ANSI_X3.4-1968").orElseThrow();
        assertTrue(said.contains("LC_ALL=C.UTF-8") && said.contains("nothing was done"), said);
    }

    @Test
    void othersAreTaken() {
        assertEquals(Optional.empty(), ArgumentEncoding.refusal(new String[] {"add", "5 0 4'6 für"}, "UTF-8"));
    }
}
