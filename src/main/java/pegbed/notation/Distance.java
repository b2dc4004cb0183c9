package pegbed.notation;

import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import pegbed.model.Pole;

/**
 * A distance as typed.
 *
 * @param metres from the seat, 0 to {@value #FARTHEST_METRES}
 * @param sdMetres how well it is known
 * @param typed what was typed
 */
record Distance(double metres, double sdMetres, String typed) {
    /** Farther than this is taken for a slip of the pen. */
    static final double FARTHEST_METRES = 100;

    private static final Pattern JOINT = Pattern.compile("s(?:ection)? *(\\d{1,9})(?=[ ;+-]|,(?:[ ;]|$)|$)");
    private static final Pattern SIGN = Pattern.compile("([+-]) *| +([+-]) +(?=[\\d.,])");

    /** A mark, to the next number, and what is said about a place beside it. */
    private static final Pattern MARK_AHEAD =
            Pattern.compile("(@ *[^ ;,+\\-\\d][^;,+\\-\\d]*?)(?:" + Direction.SPOKEN_OFFSET + "|(?= +\\d|[;,+-]|$))");

    /** Reads a distance: {@code 11}, {@code 36ft}, {@code s6}, {@code s6+0.5}. */
    static Distance take(Text text, Pole pole, Precisions precisions) throws NotationException {
        int from = text.at();
        refuseMarkAhead(text);
        Optional<MatchResult> joint = text.take(JOINT);
        double metres;
        if (joint.isPresent()) {
            metres = section(text, from, Integer.parseInt(joint.get().group(1)), pole);
        } else {
            metres = Length.take(text, 1)
                    .orElseThrow(() -> NotationException.about(
                            text.piece(from),
                            "is not a distance; type metres like 11, feet like 36ft, or sections like s6+0.5."))
                    .metres();
        }
        String typed = text.since(from);
        if (!(metres >= 0 && metres <= FARTHEST_METRES)) {
            throw NotationException.about(
                    typed,
                    "is not a distance between 0 and 100 m from the seat; type metres like 11 or sections like s6.");
        }
        return new Distance(metres, joint.isPresent() ? precisions.sdJointMetres() : precisions.sdPlainMetres(), typed);
    }

    /** A mark says which way, and a spoken offset how far beside it; how far from the seat is missing. */
    private static void refuseMarkAhead(Text text) throws NotationException {
        int from = text.at();
        Optional<MatchResult> ahead = text.take(MARK_AHEAD);
        if (ahead.isEmpty()) {
            return;
        }
        MatchResult found = ahead.get();
        String typed = text.since(from);
        String mark = typed.substring(0, found.end(1) - found.start()).strip();
        String offset = "";
        if (found.group(2) != null) {
            String unit = found.group(3) == null ? "" : found.group(3).strip();
            offset = (found.group(4).startsWith("l") ? "-" : "+") + found.group(2) + unit;
        }
        throw NotationException.about(
                typed.strip(),
                "says which way and not how far; type how far from the seat first, like s6 " + mark + offset + ".");
    }

    private static double section(Text text, int from, int number, Pole pole) throws NotationException {
        int sections = pole.jointMetres().size();
        if (number < 1 || number > sections) {
            throw NotationException.about(
                    text.piece(from),
                    "is not a section of this pole, which has " + sections + "; type one like s" + Math.min(6, sections)
                            + ".");
        }
        double joint = pole.jointMetres().get(number - 1);
        Optional<MatchResult> sign = text.take(SIGN);
        if (sign.isEmpty()) {
            return joint;
        }
        double offset = Length.take(text, 1)
                .orElseThrow(() -> NotationException.about(
                        text.piece(from), "has no length behind its sign; type metres from the joint like s6+0.5."))
                .metres();
        return "-".equals(sign.get().group().strip()) ? joint - offset : joint + offset;
    }
}
