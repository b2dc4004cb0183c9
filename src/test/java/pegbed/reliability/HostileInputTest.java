package pegbed.reliability;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Twenty thousand hostile texts: each is read, in whole or in part, or refused with a sentence. More run at night. */
@Tag("slow")
class HostileInputTest {
    private static final int CASES = 20_000;

    @Test
    void everyTextIsReadOrRefusedWithASentence() throws IOException, InterruptedException {
        Fuzz.Result result = Fuzz.run(CASES, 0, 100_000);
        assertTrue(result.taken() > CASES / 10, result::toString);
        assertTrue(result.refused() > CASES / 10, result::toString);
    }
}
