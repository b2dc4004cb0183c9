package pegbed.bench.quality;

import java.util.OptionalDouble;
import pegbed.findings.Findings;
import pegbed.findings.PegMap;
import pegbed.findings.Zone;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;

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

    @Override
    public double sdAt(double x, double y) {
        return map.grid().sd().sample(x, y);
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
}
