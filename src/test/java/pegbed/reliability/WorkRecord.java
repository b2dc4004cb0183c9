package pegbed.reliability;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import pegbed.model.Peg;
import pegbed.storage.peg.PegWriter;

/**
 * What a program told of its work on a peg: states that it tried and states that it confirmed. After its death the peg
 * must be the last confirmed one, or one that was tried after that.
 */
final class WorkRecord {
    private final List<String> tried = new ArrayList<>();
    private String confirmed;
    private int confirmations;
    private Optional<Path> file;
    private Optional<Path> nextFile = Optional.empty();

    /**
     * @param peg the peg at the start, which is on the disk
     * @param file where it is; empty where it has no file yet
     */
    WorkRecord(Peg peg, Optional<Path> file) {
        this(hash(peg), file);
    }

    WorkRecord(String confirmed, Optional<Path> file) {
        this.confirmed = confirmed;
        this.file = file;
    }

    /** A short name of a state. */
    static String hash(Peg peg) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256")
                    .digest(PegWriter.text(peg).getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest, 0, 12);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    void tries(String state) {
        tried.add(state);
    }

    void confirms(String state) {
        confirmed = state;
        confirmations++;
        tried.clear();
    }

    /** The peg is about to be saved under another name. */
    void moves(Path to) {
        nextFile = Optional.of(to);
    }

    /** It was. */
    void moved() {
        file = nextFile;
        nextFile = Optional.empty();
    }

    /** It was not. */
    void stayed() {
        nextFile = Optional.empty();
    }

    int confirmations() {
        return confirmations;
    }

    String confirmed() {
        return confirmed;
    }

    Optional<Path> file() {
        return file;
    }

    /** The name that it was being saved under when the program died. */
    Optional<Path> nextFile() {
        return nextFile;
    }

    /** Whether a state that came back is a right one. */
    boolean allows(String state) {
        return state.equals(confirmed) || tried.contains(state);
    }

    @Override
    public String toString() {
        return "confirmed " + confirmed + ", tried " + tried + ", file " + file + ", next file " + nextFile;
    }
}
