package pegbed.cli.output;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import pegbed.surface.prior.NeighbourInfluence;

/** What a bottom has from neighbouring pegs of the same water, in JSON. */
public final class NeighbouringPegsJson {
    private NeighbouringPegsJson() {}

    /** Adds {@code other_pegs}; nothing where the bottom stands by itself. */
    public static void put(ObjectNode node, Optional<NeighbourInfluence> influence) {
        influence.ifPresent(neighbours -> node.putObject("other_pegs")
                .put("count", neighbours.pegs())
                .put("alike", Output.rounded(neighbours.alike(), 2)));
    }
}
