package pegbed.visits;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pegbed.findings.ConnectedAreas;
import pegbed.geometry.PegWater;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.surface.ChangeField;
import pegbed.surface.grid.Field;
import pegbed.surface.grid.GridFrame;
import pegbed.surface.survey.Survey;

/**
 * What silted and what was dug out between two visits.
 *
 * @param earlier index of the earlier visit
 * @param later index of the later one
 * @param deeperMetres how much deeper the bottom is at the later visit, metres, on 50 cm; NaN where that is less than
 *     twice its doubt, and on land
 * @param sdMetres standard deviation of it, metres; NaN where {@code deeperMetres} is
 * @param places the connected places where it shows, the largest change first
 */
public record VisitComparison(int earlier, int later, Field deeperMetres, Field sdMetres, List<ChangedPlace> places) {
    private static final double CELL_METRES = 0.5;

    /**
     * A place that has changed.
     *
     * @param middle where the change is greatest
     * @param deeperMetres how much deeper it is there, metres; negative if it silted up
     * @param sdMetres standard deviation of that, metres
     * @param areaMetres2 over how much ground it shows, square metres
     */
    public record ChangedPlace(Place middle, double deeperMetres, double sdMetres, double areaMetres2) {}

    public VisitComparison {
        places = List.copyOf(places);
    }

    /**
     * Compares two visits of a peg.
     *
     * @throws InputException if the peg has no such visits or its banks can't be used
     */
    public static VisitComparison of(Peg peg, int earlier, int later, Monitor monitor) throws InputException {
        if (earlier < 0 || later <= earlier || later >= peg.visits().size()) {
            throw new InputException("This peg has " + peg.visits().size()
                    + (peg.visits().size() == 1 ? " visit" : " visits")
                    + "; give the number of an earlier and of a later one, such as 1 and 2.");
        }
        for (int visit : new int[] {earlier, later}) {
            if (peg.visits().get(visit).readings().isEmpty()) {
                throw new InputException("Nothing was read at visit " + (visit + 1) + ", so it can't be compared.");
            }
        }
        PegWater water = PegWater.of(peg);
        ChangeField change = ChangeField.of(Survey.of(withoutDigging(peg), water), earlier, later, monitor);
        double reach = water.reachMetres();
        GridFrame frame = GridFrame.covering(-reach, -reach, reach, reach, CELL_METRES);
        double[] deeper = new double[frame.size()];
        double[] sd = new double[frame.size()];
        for (int i = 0; i < deeper.length; i++) {
            double x = frame.x(i % frame.columns());
            double y = frame.y(i / frame.columns());
            deeper[i] = Double.NaN;
            sd[i] = Double.NaN;
            if (water.isWater(x, y)) {
                ChangeField.Change at = change.at(x, y);
                deeper[i] = at.isShown() ? at.deeperMetres() : Double.NaN;
                sd[i] = at.isShown() ? at.sdMetres() : Double.NaN;
            }
        }
        return new VisitComparison(
                earlier, later, new Field(frame, deeper), new Field(frame, sd), places(frame, deeper, sd));
    }

    /** Digging is what a comparison is to show, so no reading is left out because of it. */
    private static Peg withoutDigging(Peg peg) {
        return peg.withVisits(
                peg.visits().stream().map(visit -> visit.withAfresh(false)).toList());
    }

    private static List<ChangedPlace> places(GridFrame frame, double[] deeper, double[] sd) {
        List<ChangedPlace> places = new ArrayList<>();
        boolean[] seen = new boolean[deeper.length];
        for (int start = 0; start < deeper.length; start++) {
            if (seen[start] || Double.isNaN(deeper[start])) {
                continue;
            }
            double sign = Math.signum(deeper[start]);
            List<Integer> nodes = ConnectedAreas.from(frame, start, i -> deeper[i] * sign > 0);
            nodes.forEach(i -> seen[i] = true);
            int largest = nodes.stream()
                    .max(Comparator.comparingDouble(i -> Math.abs(deeper[i])))
                    .orElseThrow();
            places.add(new ChangedPlace(
                    new Place(frame.x(largest % frame.columns()), frame.y(largest / frame.columns())),
                    deeper[largest],
                    sd[largest],
                    nodes.size() * frame.cellMetres() * frame.cellMetres()));
        }
        places.sort(Comparator.comparingDouble((ChangedPlace place) -> -Math.abs(place.deeperMetres())));
        return places;
    }
}
