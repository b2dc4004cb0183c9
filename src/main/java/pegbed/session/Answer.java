package pegbed.session;

import java.util.Optional;
import pegbed.findings.Findings;
import pegbed.findings.PegMap;

/** How far the answers to the open peg are. */
public sealed interface Answer {
    /**
     * The latest answers there are, if the state has any; those of an older revision are marked as old by the state.
     */
    Optional<Ready> shown();

    /** What to draw: the answers shown, else the place alone, on which nothing was found and no depth may be drawn. */
    default Optional<Ready> picture() {
        return shown();
    }

    /**
     * Nothing has been entered about the peg.
     *
     * @param place the place to draw, once there is a picture of it
     */
    record NothingYet(Optional<Ready> place) implements Answer {
        @Override
        public Optional<Ready> shown() {
            return Optional.empty();
        }

        @Override
        public Optional<Ready> picture() {
            return place;
        }
    }

    /**
     * Too little has been entered to find a bottom.
     *
     * @param missing what is missing and how to give it, one sentence
     * @param place the place to draw, once there is a picture of it
     */
    record TooLittle(String missing, Optional<Ready> place) implements Answer {
        @Override
        public Optional<Ready> shown() {
            return Optional.empty();
        }

        @Override
        public Optional<Ready> picture() {
            return place;
        }
    }

    /**
     * The answers are being worked out.
     *
     * @param revision of the peg that they will be for
     * @param before what to show meanwhile, marked as such: older answers, those in which one reading was added to what
     *     was learned before ({@link PegMap#withOneMore}), or those without what other pegs of the water teach
     */
    record Computing(long revision, Optional<Ready> before) implements Answer {
        @Override
        public Optional<Ready> shown() {
            return before;
        }
    }

    /**
     * The answers are there.
     *
     * @param revision of the peg that they are for
     * @param map the bottom
     * @param findings what was found on it at the target depth
     */
    record Ready(long revision, PegMap map, Findings findings) implements Answer {
        @Override
        public Optional<Ready> shown() {
            return Optional.of(this);
        }
    }

    /**
     * No answers can be had.
     *
     * @param revision of the peg that was tried
     * @param why one sentence
     * @param before older answers to show meanwhile, marked as such
     */
    record Failed(long revision, String why, Optional<Ready> before) implements Answer {
        @Override
        public Optional<Ready> shown() {
            return before;
        }
    }
}
