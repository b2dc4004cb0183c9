package pegbed.notation;

import java.util.ArrayList;
import java.util.List;
import pegbed.geometry.Shoreline;
import pegbed.model.Banks;
import pegbed.model.Hazard;
import pegbed.model.Peg;
import pegbed.model.Reading;
import pegbed.model.Visit;

/** What a typed line makes of a peg. */
public final class Entry {
    private Entry() {}

    /**
     * The peg with the line's reading at today's visit, its edge in the bank or island it lies at
     * ({@link Shoreline#nearest}), or its snag among the hazards. A visit that nobody began begins with its first
     * reading, where that has a time.
     */
    public static Peg in(Peg peg, Line line) {
        if (line instanceof Line.ReadingLine reading) {
            return peg.withToday(visit -> begun(visit, reading.reading())).withReading(reading.reading());
        }
        if (line instanceof Line.EdgeLine edge) {
            Banks banks = peg.banks();
            return peg.withBanks(Shoreline.nearest(banks, edge.point().place()).with(banks, edge.point()));
        }
        List<Hazard> hazards = new ArrayList<>(peg.hazards());
        hazards.add(((Line.SnagLine) line).hazard());
        return peg.withHazards(hazards);
    }

    private static Visit begun(Visit visit, Reading first) {
        return visit.start().isEmpty() && visit.readings().isEmpty() ? visit.withStart(first.time()) : visit;
    }
}
