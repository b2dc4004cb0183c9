package pegbed.cli;

import java.util.Optional;

/** Whether the letters of the arguments came through. */
public final class ArgumentEncoding {
    /** What Java puts in the place of a letter that the locale's character set does not have. */
    private static final char LOST = '\uFFFD';

    private ArgumentEncoding() {}

    /**
     * Why arguments can't be taken as they came; empty if they can. Under a locale without a character set of its own,
     * such as C, Java loses every letter outside ASCII, and what was typed would be stored so.
     *
     * @param charset the character set in which Java read them, the property {@code sun.jnu.encoding}
     */
    public static Optional<String> refusal(String[] args, String charset) {
        for (String each : args) {
            if (each.indexOf(LOST) >= 0) {
                return Optional.of("The argument \"" + each
                        + "\" has letters that this locale's character set, " + charset
                        + ", does not have; nothing was done. Set LC_ALL=C.UTF-8 first, or start the script pegbed, which"
                        + " does.");
            }
        }
        return Optional.empty();
    }
}
