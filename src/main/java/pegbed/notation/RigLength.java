package pegbed.notation;

import java.util.Optional;
import pegbed.model.Units;

/**
 * Lengths on a rig, as they are typed and printed: a hook length, the height of a shot. They are short, so a bare
 * number that would mean feet is not taken: four inches are far likelier than four feet.
 *
 * @param unit the person's unit of depths
 */
public record RigLength(Units.Depth unit) {
    /** Half of the last printed digit where it is the half inch, and a little for arithmetic. */
    private static final double PRINTED_METRES = FeetAndInches.INCH_METRES / 4 + 1e-9;

    /** As it is typed, to the half inch or the millimetre: {@code 4in}, {@code 1'5.5}, {@code 10cm}, {@code 0.1m}. */
    public String print(double metres) {
        return switch (unit) {
            case FEET -> FeetAndInches.typed(metres, 2);
            case CENTIMETRES -> Numbers.print(metres * 100, 0, 1) + "cm";
            case METRES -> Numbers.print(metres, 0, 3) + "m";
        };
    }

    /**
     * Reads a length. One that is past a limit by no more than printing rounds is that limit.
     *
     * @param what it is, as a sentence begins: {@code The hook length}
     * @param minMetres the shortest, metres
     * @param maxMetres the longest, metres
     * @param usualMetres an example, metres
     * @return metres, from minMetres to maxMetres
     * @throws NotationException if it is not a length, or not between the limits
     */
    public double parse(String typed, String what, double minMetres, double maxMetres, double usualMetres)
            throws NotationException {
        String right = what + " is a length like " + print(usualMetres);
        Text text = new Text(typed);
        if (text.atEnd()) {
            throw NotationException.saying("", right + "; nothing stands there.");
        }
        Optional<Length> read = length(text);
        if (read.isEmpty() || !text.atEnd()) {
            throw NotationException.saying(
                    typed.strip(), right + "; " + NotationException.quoted(typed.strip()) + " is none.");
        }
        double metres = sure(read.get(), typed.strip());
        double limited = Math.max(minMetres, Math.min(maxMetres, metres));
        if (Math.abs(limited - metres) > PRINTED_METRES) {
            throw NotationException.saying(
                    typed.strip(),
                    right + ", from " + print(minMetres) + " to " + print(maxMetres) + "; "
                            + NotationException.quoted(typed.strip()) + " is too "
                            + (metres < limited ? "short" : "long")
                            + ".");
        }
        return limited;
    }

    /** Reads a length here; empty, with nothing read, where there is none. */
    Optional<Double> take(Text text) throws NotationException {
        int from = text.at();
        Optional<Length> length = length(text);
        return length.isEmpty() ? Optional.empty() : Optional.of(sure(length.get(), text.since(from)));
    }

    private Optional<Length> length(Text text) throws NotationException {
        return Length.take(
                text,
                switch (unit) {
                    case FEET -> FeetAndInches.FOOT_METRES;
                    case CENTIMETRES -> 0.01;
                    case METRES -> 1;
                });
    }

    /** The metres of a length, unless nobody can be sure which unit was meant. */
    private double sure(Length length, String typed) throws NotationException {
        if (unit == Units.Depth.FEET && length.form() == Length.Form.BARE && length.metres() > 0) {
            throw NotationException.about(
                    typed, "could be feet or inches; type " + typed + "in for inches, or 1'5 for feet and inches.");
        }
        return length.metres();
    }
}
