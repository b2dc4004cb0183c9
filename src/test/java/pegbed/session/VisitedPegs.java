package pegbed.session;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pegbed.model.Extras;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.model.Visit;
import pegbed.storage.disk.PegFile;

/** The invented sample pegs with visits for the tests. */
public final class VisitedPegs {
    /** A morning after the samples' last visits. */
    public static final Clock MORNING = Clock.fixed(Instant.parse("2026-09-12T06:30:00Z"), ZoneOffset.UTC);

    /** Where {@link #dugOut} digs. */
    public static final Place HOLE = Place.polar(7, -15.3);

    /** How deep it digs, metres. */
    public static final double DUG_METRES = 0.35;

    private VisitedPegs() {}

    /** Peg 9 of Tansy Cut: two visits, the second with the water 8 cm higher. */
    public static Peg nine() throws InputException {
        return PegFile.read(Path.of("sample-pegs/tansy-cut-9.peg.json")).peg();
    }

    /** Peg 14 of Tansy Cut: one visit, its board measured. */
    public static Peg fourteen() throws InputException {
        return PegFile.read(Path.of("sample-pegs/tansy-cut-14.peg.json")).peg();
    }

    /** Peg 9 with a third visit at the first one's level, which read the same but for a hole. */
    public static Peg dugOut() throws InputException {
        Peg peg = nine();
        List<Reading> again = new ArrayList<>(
                peg.visits().get(0).readings().stream().map(VisitedPegs::dug).toList());
        for (double angle : new double[] {-19, -11}) {
            again.add(dug(Reading.of(7, angle, depthAt(peg, HOLE))));
        }
        List<Visit> visits = new ArrayList<>(peg.visits());
        visits.add(new Visit(
                Optional.of(OffsetDateTime.parse("2026-08-20T08:00:00+01:00")),
                OptionalDouble.empty(),
                again,
                "",
                Extras.NONE));
        return peg.withVisits(visits);
    }

    private static double depthAt(Peg peg, Place place) {
        return peg.visits().get(0).readings().stream()
                .min(java.util.Comparator.comparingDouble(r -> r.place().distanceTo(place)))
                .orElseThrow()
                .depthMetres();
    }

    private static Reading dug(Reading r) {
        double deeper = r.place().distanceTo(HOLE) < 1 ? DUG_METRES : 0;
        return Reading.of(r.place().distanceMetres(), r.place().angleDegrees(), r.depthMetres() + deeper);
    }
}
