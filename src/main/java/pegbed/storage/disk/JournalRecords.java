package pegbed.storage.disk;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pegbed.storage.peg.Fingerprint;
import pegbed.storage.peg.PegWriter;

/**
 * The records of a journal: each is one line, {@code LENGTH SHA256 BASE}, and that many bytes of peg file; BASE is the
 * fingerprint of the file that the edits began from, or {@code -}.
 */
final class JournalRecords {
    private static final Pattern HEADER = Pattern.compile("(\\d{1,9}) ([0-9a-f]{64}) ([0-9a-f]{64}|-)\n");

    private JournalRecords() {}

    /**
     * A whole record.
     *
     * @param body the peg file
     * @param base fingerprint of the file that the edits began from
     * @param end offset behind the record
     */
    record Kept(byte[] body, Optional<Fingerprint> base, int end) {}

    static byte[] record(Journal.Entry entry) {
        byte[] body = PegWriter.bytes(entry.peg());
        String header = body.length + " " + Fingerprint.of(body).sha256() + " "
                + entry.base().map(Fingerprint::sha256).orElse("-") + "\n";
        byte[] head = header.getBytes(StandardCharsets.US_ASCII);
        byte[] record = Arrays.copyOf(head, head.length + body.length);
        System.arraycopy(body, 0, record, head.length, body.length);
        return record;
    }

    /**
     * The last record that is whole. What stands between records, such as one that was cut off or has spoiled since, is
     * passed over; empty where no record is whole.
     */
    static Optional<Kept> last(byte[] bytes) {
        Optional<Kept> last = Optional.empty();
        // One letter a byte, so that offsets in the text are those in the bytes.
        Matcher header = HEADER.matcher(new String(bytes, StandardCharsets.ISO_8859_1));
        int at = 0;
        while (header.find(at)) {
            Optional<Kept> kept = kept(bytes, header);
            if (kept.isPresent()) {
                last = kept;
                at = kept.get().end();
            } else {
                at = header.start() + 1;
            }
        }
        return last;
    }

    private static Optional<Kept> kept(byte[] bytes, Matcher header) {
        long end = header.end() + Long.parseLong(header.group(1));
        if (end > bytes.length) {
            return Optional.empty();
        }
        byte[] body = Arrays.copyOfRange(bytes, header.end(), (int) end);
        String base = header.group(3);
        return Fingerprint.of(body).sha256().equals(header.group(2))
                ? Optional.of(new Kept(
                        body, "-".equals(base) ? Optional.empty() : Optional.of(new Fingerprint(base)), (int) end))
                : Optional.empty();
    }
}
