package pegbed.storage.peg;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.StreamReadConstraints;

/** How JSON from outside is read: within bounds that no honest peg file meets. */
final class Json {
    static final int LONGEST_TEXT = 1_000_000;
    static final int DEEPEST_NESTING = 64;

    private static final StreamReadConstraints BOUNDS = StreamReadConstraints.builder()
            .maxNestingDepth(DEEPEST_NESTING)
            .maxStringLength(LONGEST_TEXT)
            .maxNameLength(10_000)
            .maxNumberLength(1_000)
            .build();

    /** Plain JSON (RFC 8259). */
    static final JsonFactory STRICT =
            JsonFactory.builder().streamReadConstraints(BOUNDS).build();

    private Json() {}
}
