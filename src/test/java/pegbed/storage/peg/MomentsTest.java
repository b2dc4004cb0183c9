package pegbed.storage.peg;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Moments are read and written as the JDK's own formatter does it. */
class MomentsTest {
    private static final List<String> USUAL = List.of(
            "2026-05-02T09:14:05+01:00",
            "2026-05-02T09:14:05.25Z",
            "2026-05-02T09:14-03:30",
            "2026-12-31T23:59:59.999999999+18:00",
            "-0044-03-15T12:00:00Z",
            "+12026-05-02T00:00:00-18:00",
            "2026-02-29T09:14:05Z",
            "2024-02-29t09:14:05z",
            "2026-05-02T24:00:00Z",
            "2026-05-02T09:14:05+0100",
            "2026-05-02T09:14:05+01:00:07",
            "2026-05-02T09:14:05.Z",
            "2026-05-02T09:14:05.1234567891Z",
            "-0000-05-02T09:14:05Z",
            "",
            "2026-05-02",
            "2026-05-02T09:14:05");

    private static Optional<OffsetDateTime> byTheJdk(String text) {
        try {
            return Optional.of(OffsetDateTime.parse(text));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    @Test
    void whatIsReadIsWhatTheJdkReads() {
        USUAL.forEach(text -> assertEquals(byTheJdk(text), Moments.read(text), text));
        Random random = new Random(7);
        String letters = "0123456789-+:.TZtz ";
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder(USUAL.get(random.nextInt(USUAL.size())));
            for (int change = random.nextInt(3); change >= 0 && text.length() > 0; change--) {
                int at = random.nextInt(text.length());
                char letter = letters.charAt(random.nextInt(letters.length()));
                switch (random.nextInt(3)) {
                    case 0 -> text.setCharAt(at, letter);
                    case 1 -> text.deleteCharAt(at);
                    default -> text.insert(at, letter);
                }
            }
            assertEquals(byTheJdk(text.toString()), Moments.read(text.toString()), text.toString());
        }
    }

    @Test
    void whatIsWrittenIsWhatTheJdkWrites() {
        Random random = new Random(7);
        for (int i = 0; i < 5_000; i++) {
            OffsetDateTime moment = OffsetDateTime.of(
                    random.nextInt(22_000) - 11_000,
                    1 + random.nextInt(12),
                    1 + random.nextInt(28),
                    random.nextInt(24),
                    random.nextInt(60),
                    random.nextInt(60),
                    random.nextBoolean() ? 0 : random.nextInt(1000) * (random.nextBoolean() ? 1 : 1_000_000),
                    ZoneOffset.ofTotalSeconds((random.nextInt(73) - 36) * 1800));
            assertEquals(DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(moment), Moments.text(moment));
            assertEquals(Optional.of(moment), Moments.read(Moments.text(moment)));
        }
    }
}
