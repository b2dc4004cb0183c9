package pegbed.wording;

import java.util.List;
import java.util.Optional;
import pegbed.model.Hazard;
import pegbed.model.Peg;

/**
 * What to take care of at the water, in one text each: a short form for cards, maps and commands, and a long form,
 * which begins with it, for reading at leisure.
 */
public enum Caution {
    /** Energy Networks Association guidance to anglers. */
    POWER_LINES(
            "Overhead power lines",
            "Keep poles and rods at least 30 m from overhead power lines; carry poles taken apart and level.",
            "Poles and rods conduct, carbon when dry too; electricity jumps gaps; lines may hide in trees. The 30 m are"
                    + " the Energy Networks Association's guidance to anglers; the instructions of the venue and of the"
                    + " line's owner rule."),
    /** The 30/30 rule in angling societies' guidance. */
    LIGHTNING(
            "Lightning",
            "At the first thunder stop, put the pole down, move well away; wait 30 minutes after the last.",
            ""),
    /** Advice of lifeboat and life-saving charities. */
    WATER(
            "Water",
            "Sit level and stable, know the way out, never wade to plumb. Fallen in: float first, then call.",
            "Have a throw line and a charged phone at hand, and beware undercut banks. Below 15 °C falling in means"
                    + " cold-water shock."),
    PURPOSE("What the map is for", Caution.PURPOSE_SHORT, ""),
    /** UK law on lead weights, since 1987. */
    RULES(
            "Rules and weights",
            "The venue's rules and the law come first: licences, close seasons, bylaws. Use non-toxic weights.",
            "Pegbed does not know the rules. In the UK lead shot above 0.06 g and up to 28.35 g may not be used.");

    /** The short form of {@link #PURPOSE}. */
    public static final String PURPOSE_SHORT =
            "For choosing where to fish. Not for navigation, swimming, diving, wading or building.";

    /** Common practice. */
    private static final String FISH_SHORT =
            "How many fish may be kept, how, and how they are weighed is the venue's to say; wet hands, wet net, soon back.";

    private final String title;
    private final String shortForm;
    private final String more;

    Caution(String title, String shortForm, String more) {
        this.title = title;
        this.shortForm = shortForm;
        this.more = more;
    }

    /** What it is about, in two or three words. */
    public String title() {
        return title;
    }

    /** What to do, in one line or two. */
    public String shortForm() {
        return shortForm;
    }

    /** What to do and why, with who says so. */
    public String longForm() {
        return more.isEmpty() ? shortForm : shortForm + " " + more;
    }

    /** Those that stand below a command's answer, in the short form. */
    public static List<String> brief() {
        return List.of(PURPOSE.shortForm, POWER_LINES.shortForm, LIGHTNING.shortForm);
    }

    /** Those that stand below a day's log, in the short form. */
    public static List<String> day() {
        return List.of(RULES.shortForm, FISH_SHORT, POWER_LINES.shortForm, LIGHTNING.shortForm);
    }

    /** A warning of the peg's own, to stand before all else; empty where no overhead line is marked. */
    public static Optional<String> markedLine(Peg peg) {
        return peg.hazards().stream().anyMatch(hazard -> hazard.kind() == Hazard.Kind.OVERHEAD_LINE)
                ? Optional.of("OVERHEAD LINE AT THIS PEG: use no pole or rod within 30 m of it.")
                : Optional.empty();
    }
}
