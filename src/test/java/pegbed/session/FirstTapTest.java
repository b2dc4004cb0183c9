package pegbed.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pegbed.day.LineHistories;
import pegbed.day.LineHistory;
import pegbed.findings.Findings;
import pegbed.findings.PegMap;
import pegbed.model.DayEvent;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.plan.Plan;
import pegbed.plan.PlannedLine;
import pegbed.storage.disk.PegFile;

/** The first tap of a day begins a visit whose level is not known: the plan stays as it was. */
class FirstTapTest {
    private static final OffsetDateTime NOW = OffsetDateTime.parse("2026-11-28T10:00:00Z");

    private static List<Place> planned(Peg peg) throws InputException {
        Findings findings = Findings.of(PegMap.of(peg, Monitor.NONE), OptionalDouble.empty());
        return Plan.of(findings, peg.wishes()).lines().stream()
                .map(PlannedLine::place)
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"tansy-cut-14", "tansy-cut-9", "hobbrel-pond-3", "sallow-cut-5"})
    void whatIsTappedStaysWithItsLine(String name) throws InputException {
        Peg peg = PegFile.read(Path.of("sample-pegs", name + ".peg.json")).peg();
        List<Place> before = planned(peg);
        Peg tapped = peg;
        for (Place line : before) {
            tapped = DayEdits.add(DayEvent.of(NOW, DayEvent.Kind.FISH, Optional.of(line)))
                    .change()
                    .apply(tapped);
        }
        assertEquals(peg.visits().size() + 1, tapped.visits().size());
        assertEquals(before, planned(tapped));
        LineHistories lines = LineHistories.of(tapped.today().day(), planned(tapped), NOW.toInstant());
        for (int i = 0; i < before.size(); i++) {
            assertEquals(
                    OptionalInt.of(i + 1),
                    lines.at(before.get(i)).map(LineHistory::number).orElseThrow(),
                    "line " + (i + 1));
        }
    }
}
