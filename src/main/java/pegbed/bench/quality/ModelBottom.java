package pegbed.bench.quality;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pegbed.findings.Findings;
import pegbed.findings.PegMap;
import pegbed.findings.Zone;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Wishes;
import pegbed.plan.LineCandidate;
import pegbed.plan.Plan;
import pegbed.plan.PlannedLine;

/** The bottom as the model sees it. */
public final class ModelBottom implements SurveyedBottom {
    private final PegMap map;

    public ModelBottom(Peg peg) throws InputException {
        this(PegMap.of(peg, Monitor.NONE));
    }

    public ModelBottom(PegMap map) {
        this.map = map;
    }

    @Override
    public boolean answers(double x, double y) {
        return map.water().isWater(x, y);
    }

    @Override
    public double depthAt(double x, double y) {
        return map.grid().depth().sample(x, y);
    }

    /** Taken as normal, with the map's own mean and standard deviation. */
    @Override
    public Optional<PredictedDepth> predicted(double x, double y) {
        return Optional.of(PredictedDepth.normal(depthAt(x, y), map.grid().sd().sample(x, y)));
    }

    @Override
    public Place deepest() {
        return map.deepest().spot().place();
    }

    @Override
    public Answer flat(Zone zone, double targetMetres) {
        return Findings.of(map, OptionalDouble.of(targetMetres)).flats().stream()
                .filter(flat -> flat.zone() == zone)
                .findFirst()
                .map(flat -> new Answer(
                        flat.spot().place(),
                        flat.confidence(),
                        OptionalDouble.of(flat.spot().pFlat())))
                .orElse(null);
    }

    /** Those of a plan without wishes: at half the deepest, the usual number of each zone. */
    @Override
    public List<NamedLine> lines() {
        return Plan.of(Findings.of(map, OptionalDouble.empty()), Wishes.NONE).lines().stream()
                .map(ModelBottom::named)
                .toList();
    }

    private static NamedLine named(PlannedLine line) {
        LineCandidate candidate = line.candidate();
        Kind kind = candidate.zone().equals(Optional.of(Zone.TRACK))
                ? Kind.TRACK
                : candidate.origin() == LineCandidate.Origin.FLAT ? Kind.AT_TARGET : Kind.AT_OWN_DEPTH;
        return new NamedLine(
                kind,
                candidate.flatAtMetres(),
                new Answer(
                        candidate.place(),
                        candidate.confidence(),
                        OptionalDouble.of(candidate.spot().pFlat())));
    }
}
