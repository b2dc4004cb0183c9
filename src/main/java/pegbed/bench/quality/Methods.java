package pegbed.bench.quality;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import pegbed.bench.methods.NaturalNeighbours;
import pegbed.bench.methods.PlainGaussianProcess;
import pegbed.bench.methods.Surface;
import pegbed.bench.methods.ThinPlateSmoother;
import pegbed.findings.PegMap;
import pegbed.surface.plain.BankSites;
import pegbed.surface.plain.LinearInterpolator;
import pegbed.surface.plain.Site;

/** The methods that are measured: the model first, then the general ones through the same readings. */
final class Methods {
    static final String MODEL = "Pegbed";

    private static final Map<String, Function<List<Site>, Surface>> GENERAL = new LinkedHashMap<>();

    static {
        GENERAL.put("thin-plate smoother", ThinPlateSmoother::of);
        GENERAL.put("plain Gaussian process", PlainGaussianProcess::new);
        GENERAL.put("triangulation", sites -> new LinearInterpolator(sites)::depthAt);
        GENERAL.put("natural neighbours", NaturalNeighbours::new);
    }

    private Methods() {}

    static List<String> names() {
        List<String> names = new ArrayList<>(List.of(MODEL));
        names.addAll(GENERAL.keySet());
        return names;
    }

    /** The bottom of one peg by every method, in the order of their names. */
    static Map<String, SurveyedBottom> of(PegMap map) {
        Map<String, SurveyedBottom> bottoms = new LinkedHashMap<>();
        bottoms.put(MODEL, new ModelBottom(map));
        List<Site> sites = BankSites.of(map.peg(), map.water());
        GENERAL.forEach((name, method) -> bottoms.put(name, new SurfaceBottom(method.apply(sites), map)));
        return bottoms;
    }
}
