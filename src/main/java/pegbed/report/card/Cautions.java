package pegbed.report.card;

import java.util.ArrayList;
import java.util.List;
import pegbed.model.Hazard;
import pegbed.model.Peg;

/** What every card says, whatever is on it. */
final class Cautions {
    /** Energy Networks Association guidance to anglers, the 30/30 rule, life-saving charities' advice. */
    private static final List<String> ALWAYS = List.of(
            "Overhead power lines: keep poles and rods at least 30 m away. Carry poles taken apart and level.",
            "Lightning: stop, put the pole down, move well away; wait 30 minutes after the last thunder.",
            "Water: sit level and stable, know the way out, never wade to plumb. Fallen in: float first, then call.",
            "For choosing where to fish. Not for navigation, swimming, wading, diving or building.",
            "The venue's rules and the law come first: licences, close seasons, bylaws. Use non-toxic weights.");

    private Cautions() {}

    static List<String> of(Peg peg) {
        List<String> cautions = new ArrayList<>();
        if (hasOverheadLine(peg)) {
            cautions.add("AN OVERHEAD LINE IS MARKED AT THIS PEG. Use no pole or rod within 30 m of it.");
        }
        cautions.addAll(ALWAYS);
        return cautions;
    }

    /** Whether the first of them is a warning of this peg's own. */
    static boolean hasOverheadLine(Peg peg) {
        return peg.hazards().stream().anyMatch(hazard -> hazard.kind() == Hazard.Kind.OVERHEAD_LINE);
    }
}
