package pegbed.exchange;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import pegbed.findings.Findings;
import pegbed.findings.PegMap;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Position;
import pegbed.plan.Plan;
import pegbed.storage.disk.PegFile;

/** The sample peg 14 with a position, mapped once for all tests. */
final class ExportedPeg {
    static final Position POSITION = new Position(52.1234, -1.2345, 312.5, OptionalDouble.of(4));

    /** With the position. */
    static final Plan PLAN = plan(Optional.of(POSITION));

    private ExportedPeg() {}

    private static Plan plan(Optional<Position> position) {
        try {
            Peg peg = PegFile.read(Path.of("sample-pegs/tansy-cut-14.peg.json"))
                    .peg()
                    .withPosition(position);
            PegMap map = PegMap.of(peg, Monitor.NONE);
            return Plan.of(Findings.of(map, OptionalDouble.empty()), peg.wishes());
        } catch (InputException e) {
            throw new IllegalStateException(e);
        }
    }

    static PegMap map() {
        return PLAN.findings().map();
    }

    /** The plan without the position: the bottom is the same. */
    static Plan withoutPosition() {
        PegMap map = map().withPeg(map().peg().withPosition(Optional.empty()));
        return Plan.of(Findings.of(map, OptionalDouble.empty()), map.peg().wishes());
    }

    static byte[] bytes(Plan plan, Export.Kind kind, boolean grid) throws InputException, IOException {
        return Export.of(plan.findings().map().peg(), kind, grid).bytes(plan, Monitor.NONE);
    }

    static Path file(Path folder, Plan plan, Export.Kind kind, boolean grid) throws InputException, IOException {
        return Files.write(folder.resolve("peg" + kind.ending()), bytes(plan, kind, grid));
    }
}
