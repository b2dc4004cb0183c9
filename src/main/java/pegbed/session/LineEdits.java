package pegbed.session;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import pegbed.geometry.Shoreline;
import pegbed.model.Peg;
import pegbed.model.Reading;
import pegbed.notation.Entry;
import pegbed.notation.Line;

/** A typed line as an edit; what it makes of a peg is {@link Entry}'s. */
public final class LineEdits {
    private LineEdits() {}

    /** Adds what was typed. */
    public static Edit add(Peg peg, Line line) {
        return Edit.of("Add " + what(peg, line), before -> Entry.in(before, line));
    }

    /** Adds what was pasted, undone as one. */
    public static Edit addAll(List<Line> lines) {
        List<Line> all = List.copyOf(lines);
        return Edit.of("Add " + all.size() + " lines", before -> {
            Peg peg = before;
            for (Line line : all) {
                peg = Entry.in(peg, line);
            }
            return peg;
        });
    }

    /** The line with a moment to the second, if it is a reading; edges and snags have none. */
    public static Line at(OffsetDateTime moment, Line line) {
        if (!(line instanceof Line.ReadingLine typed)) {
            return line;
        }
        Reading reading = typed.reading();
        return new Line.ReadingLine(new Reading(
                reading.typed(),
                reading.place(),
                reading.precision(),
                reading.depthMetres(),
                reading.bottom(),
                reading.note(),
                Optional.of(moment.withNano(0)),
                reading.extras()));
    }

    private static String what(Peg peg, Line line) {
        if (line instanceof Line.EdgeLine edge) {
            return Shoreline.nearest(peg.banks(), edge.point().place()).kind().words() + " point";
        }
        return line instanceof Line.SnagLine snag ? snag.hazard().kind().word() : "reading";
    }
}
