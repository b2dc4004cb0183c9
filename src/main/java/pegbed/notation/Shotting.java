package pegbed.notation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import pegbed.model.Extras;
import pegbed.model.Shot;
import pegbed.model.ShotGroup;
import pegbed.model.Units;

/**
 * The shot on a rig as people write it, from the hook up: {@code 5 No.10 4in to 1'5, 1 No.8 at 6in}. A group is how
 * many, the size with or without {@code No.}, and how far above the hook: one height where they sit together, two where
 * they are spread. {@code ×} or {@code x} may stand behind the number; commas or semicolons part the groups.
 */
public final class Shotting {
    /** A comma between two digits is a decimal sign. */
    private static final Pattern BETWEEN = Pattern.compile("[;\\n]|,(?!\\d)|(?<!\\d),");

    /** A hyphen between two heights. */
    private static final Pattern HYPHEN = Pattern.compile("(?<=[\\d\"'″”’′½¼¾nmtsh])\\s*[-–—]\\s*(?=[\\d½¼¾])");

    private static final Pattern COUNT = Pattern.compile("(?:bulk +of +)?(\\d{1,6})(?!\\d) *(?:[x×*] *)?");
    private static final Pattern SIZE = Pattern.compile("(?:(?:no|nr)\\.? *|#)?(\\d{1,2}|\\p{L}+)(?=[ @:]|$)");
    private static final Pattern AT = Pattern.compile(" *(?:(?:at|from|spread)(?= )|@|:)? *");
    private static final Pattern TO = Pattern.compile(" +(?:up +)?to +");

    private static final double HIGHEST_METRES = 10;

    private final RigLength lengths;
    private final String example;

    /** @param unit the person's unit of depths */
    public Shotting(Units.Depth unit) {
        lengths = new RigLength(unit);
        example = switch (unit) {
            case FEET -> "5 No.10 4in to 1'5, 1 No.8 at 6in";
            case CENTIMETRES -> "5 No.10 10cm to 45cm, 1 No.8 at 15cm";
            case METRES -> "5 No.10 0.1m to 0.45m, 1 No.8 at 0.15m";
        };
    }

    /** A right example in the person's unit. */
    public String example() {
        return example;
    }

    /** As it is typed, heights to the half inch or the millimetre; empty for no shot. */
    public String print(List<ShotGroup> groups) {
        return groups.stream().map(this::print).collect(Collectors.joining(", "));
    }

    private String print(ShotGroup group) {
        String low = lengths.print(group.lowestMetres());
        String high = lengths.print(group.highestMetres());
        return group.count() + " " + group.shot().word() + " " + (low.equals(high) ? "at " + low : low + " to " + high);
    }

    /**
     * Reads shotting; a blank text is no shot.
     *
     * @throws NotationException if a group can't be read
     */
    public List<ShotGroup> parse(String typed) throws NotationException {
        List<ShotGroup> groups = new ArrayList<>();
        for (String piece : BETWEEN.split(typed)) {
            if (!piece.isBlank()) {
                groups.add(group(piece.strip()));
            }
        }
        return List.copyOf(groups);
    }

    /**
     * As {@link #parse(String)}; a group that reads as one did before is that one, with its heights as exact as they
     * were and whatever else it carries.
     */
    public List<ShotGroup> parse(String typed, List<ShotGroup> before) throws NotationException {
        List<ShotGroup> left = new ArrayList<>(before);
        List<ShotGroup> groups = new ArrayList<>();
        for (ShotGroup group : parse(typed)) {
            Optional<ShotGroup> same =
                    left.stream().filter(old -> print(old).equals(print(group))).findFirst();
            same.ifPresent(left::remove);
            groups.add(same.orElse(group));
        }
        return List.copyOf(groups);
    }

    private ShotGroup group(String piece) throws NotationException {
        Text text = new Text(HYPHEN.matcher(piece).replaceAll(" to "));
        Optional<MatchResult> counted = text.take(COUNT);
        if (counted.isEmpty()) {
            throw wrong(piece, "does not begin with how many shot");
        }
        int count = Integer.parseInt(counted.get().group(1));
        if (count < 1 || count > ShotGroup.MOST) {
            throw wrong(piece, "has " + count + " shot in one group, and 1 to " + ShotGroup.MOST + " can be");
        }
        Shot shot = size(text, piece);
        text.take(AT);
        double one = height(text, piece);
        double other = text.take(TO).isPresent() ? height(text, piece) : one;
        text.skipSeparators();
        if (!text.atEnd()) {
            throw wrong(piece, "goes on with " + NotationException.quoted(text.rest()) + " behind its heights");
        }
        return new ShotGroup(count, shot, Math.min(one, other), Math.max(one, other), Extras.NONE);
    }

    private Shot size(Text text, String piece) throws NotationException {
        Optional<MatchResult> sized = text.take(SIZE);
        if (sized.isEmpty()) {
            throw wrong(piece, "has no size of shot behind how many");
        }
        String word = sized.get().group(1);
        return Arrays.stream(Shot.values())
                .filter(shot ->
                        shot.word().toLowerCase(Locale.ROOT).replace("no.", "").equals(word))
                .findFirst()
                .orElseThrow(() -> wrong(piece, "has a size of shot that is not known, " + word));
    }

    private double height(Text text, String piece) throws NotationException {
        Optional<Double> metres = lengths.take(text);
        if (metres.isEmpty()) {
            throw wrong(piece, "does not say how far above the hook");
        }
        if (metres.get() > HIGHEST_METRES) {
            throw wrong(piece, "has shot more than " + lengths.print(HIGHEST_METRES) + " above the hook");
        }
        return metres.get();
    }

    private NotationException wrong(String piece, String what) {
        return NotationException.saying(
                piece, NotationException.quoted(piece) + " " + what + "; type shot like " + example + ".");
    }
}
