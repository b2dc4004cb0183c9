package pegbed.storage.peg;

import java.util.HashSet;
import java.util.Set;
import pegbed.model.Peg;
import pegbed.model.PegName;
import pegbed.model.Reading;

/** Which other pegs of a water inform one: the nearest by number, and no copies. */
public final class OtherPegs {
    /** So many inform another at most. */
    public static final int MOST = 6;

    /** So many readings alike are no chance. */
    private static final int FEWEST_OF_A_COPY = 4;

    private static final int MOST_DIGITS = 15;

    private OtherPegs() {}

    /** How far apart two pegs are by their numbers; the greatest there is where one begins with none. */
    public static long apart(PegName a, PegName b) {
        long first = leadingNumber(a);
        long second = leadingNumber(b);
        return first == Long.MAX_VALUE || second == Long.MAX_VALUE ? Long.MAX_VALUE : Math.abs(first - second);
    }

    /** The number with which a peg's number begins; the greatest there is where it begins with none. */
    public static long leadingNumber(PegName name) {
        int end = 0;
        while (end < Math.min(MOST_DIGITS, name.number().length())
                && name.number().charAt(end) >= '0'
                && name.number().charAt(end) <= '9') {
            end++;
        }
        return end == 0 ? Long.MAX_VALUE : Long.parseLong(name.number().substring(0, end));
    }

    /**
     * Whether all that was read at one of two pegs was read at the other too, as at a copy under another number, whose
     * readings would count twice; a few alike may be chance.
     */
    public static boolean isCopy(Peg a, Peg b) {
        Set<Sounded> first = sounded(a);
        Set<Sounded> second = sounded(b);
        return Math.min(first.size(), second.size()) >= FEWEST_OF_A_COPY
                && (first.containsAll(second) || second.containsAll(first));
    }

    /** A reading as a copy keeps it, millimetres. */
    private record Sounded(long x, long y, long depth) {}

    private static Set<Sounded> sounded(Peg peg) {
        Set<Sounded> all = new HashSet<>();
        for (Reading reading : peg.readings()) {
            all.add(new Sounded(
                    Math.round(1000 * reading.place().xMetres()),
                    Math.round(1000 * reading.place().yMetres()),
                    Math.round(1000 * reading.depthMetres())));
        }
        return all;
    }
}
