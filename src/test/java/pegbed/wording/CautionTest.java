package pegbed.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pegbed.model.Extras;
import pegbed.model.Hazard;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Typed;

class CautionTest {
    @ParameterizedTest
    @EnumSource
    void theReadmeHasTheSameWords(Caution caution) throws IOException {
        String readme = Files.readString(Path.of("README.md")).replaceAll("\\s+", " ");
        assertTrue(readme.contains("- **" + caution.title() + "**: " + caution.longForm()), caution.longForm());
    }

    @ParameterizedTest
    @EnumSource
    void theLongFormBeginsWithTheShortOne(Caution caution) {
        assertTrue(caution.longForm().startsWith(caution.shortForm()));
    }

    /** Energy Networks Association guidance to anglers. */
    @Test
    void thirtyMetresFromPowerLines() {
        assertTrue(Caution.POWER_LINES.shortForm().contains("at least 30 m"));
    }

    @Test
    void onlyAMarkedOverheadLineIsWarnedOf() {
        assertEquals(Optional.empty(), Caution.markedLine(with(Hazard.Kind.SNAG)));
        assertTrue(Caution.markedLine(with(Hazard.Kind.OVERHEAD_LINE)).isPresent());
    }

    private static Peg with(Hazard.Kind kind) {
        return Peg.EMPTY.withHazards(
                List.of(new Hazard(kind, List.of(new Place(0, 5)), 1, "", Typed.NOTHING, Extras.NONE)));
    }
}
