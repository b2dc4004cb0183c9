package pegbed.ui.app;

import java.util.List;

/** The cautions that are one click away, and shown on first start. */
final class CautionsSheet {
    /**
     * One of them.
     *
     * @param title what it is about
     * @param words what to do, with who says so
     */
    record Caution(String title, String words) {}

    static final List<Caution> ALL = List.of(
            new Caution(
                    "Overhead power lines",
                    "Keep at least 30 m away (Energy Networks Association guidance to anglers). Poles and rods conduct,"
                            + " carbon when dry too; electricity jumps gaps; lines may hide in trees. Carry poles taken"
                            + " apart and level. The instructions of the venue and of the line's owner rule."),
            new Caution(
                    "Lightning",
                    "Stop fishing, put the pole down, move well away, and wait 30 minutes after the last thunder."),
            new Caution(
                    "Water",
                    "A level and stable place, a known way out, a throw line, a charged phone. Never wade to plumb;"
                            + " beware undercut banks. Below 15 °C falling in means cold-water shock: float first, then"
                            + " call."),
            new Caution(
                    "What the map is for",
                    "For choosing where to fish. It is not for navigation, swimming, diving, wading or building."),
            new Caution(
                    "Rules",
                    "Lead shot above 0.06 g and up to 28.35 g may not be used in the UK; use non-toxic plummets and"
                            + " shot. Fishery rules, close seasons, licences and bylaws come first; the program does"
                            + " not know them."));

    private CautionsSheet() {}
}
