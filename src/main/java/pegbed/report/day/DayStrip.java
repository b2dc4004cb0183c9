package pegbed.report.day;

import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbed.day.LineHistories;
import pegbed.day.LineHistory;
import pegbed.day.Spell;
import pegbed.model.DayEvent;
import pegbed.model.Peg;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Item;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.Text;
import pegbed.report.drawing.TextMeasure;
import pegbed.report.drawing.View;
import pegbed.wording.DayLogWords;
import pegbed.wording.DayWords;

/**
 * A day as a strip: a row for each line, time from left to right. A bar while the line was fished, a disc for each fish
 * (larger where several were noted at once), a ring for a bite, a cross for a lost fish or a snag, a triangle under the
 * bar for feed.
 */
public final class DayStrip {
    private static final Lettering LABEL = Lettering.plain(9);
    private static final Lettering TIME = Lettering.plain(8);
    private static final double ROW = 27;
    private static final double BAR = 11;
    private static final double FISH = 2.9;
    private static final double FEED = 2.6;
    private static final double GAP = 7;
    private static final double AXIS = 14;
    private static final double LEGEND_ROW = 14;

    /** Widest share of the strip that the lines' names take. */
    private static final double MOST_LABEL = 0.3;

    /** Steps between figures of the time, minutes. */
    private static final int[] STEPS = {15, 30, 60, 120, 240, 480};

    private static final int SHORTEST_MINUTES = 30;

    private final Peg peg;
    private final List<LineHistory> lines;
    private final ZoneOffset offset;
    private final Instant from;
    private final Instant to;
    private final TextMeasure measure;
    private final List<Item> items = new ArrayList<>();

    private DayStrip(Peg peg, List<LineHistory> lines, OffsetDateTime first, Instant now, TextMeasure measure) {
        this.peg = peg;
        this.lines = lines;
        this.measure = measure;
        offset = first.getOffset();
        from = first.toInstant();
        Instant least = from.plus(Duration.ofMinutes(SHORTEST_MINUTES));
        to = now.isBefore(least) ? least : now;
    }

    /**
     * The strip of a day.
     *
     * @param peg the peg
     * @param histories the day's lines; those without an event are left out
     * @param width of the sheet, points
     * @param measure how wide texts come out
     * @return empty where nothing happened on a line
     */
    public static Optional<Drawing> of(Peg peg, LineHistories histories, double width, TextMeasure measure) {
        List<LineHistory> lines = histories.lines().stream()
                .filter(line -> !line.events().isEmpty())
                .toList();
        return lines.stream()
                .map(line -> line.events().get(0).time())
                .min(OffsetDateTime.timeLineOrder())
                .map(first -> new DayStrip(peg, lines, earliest(lines, first), latest(histories, lines), measure)
                        .drawn(width));
    }

    private static OffsetDateTime earliest(List<LineHistory> lines, OffsetDateTime first) {
        return lines.stream()
                .flatMap(line -> line.spells().stream())
                .map(spell -> spell.start().atOffset(first.getOffset()))
                .filter(start -> start.isBefore(first))
                .min(OffsetDateTime.timeLineOrder())
                .orElse(first);
    }

    /** Up to now while a line is fished, else up to the last that was noted. */
    private static Instant latest(LineHistories histories, List<LineHistory> lines) {
        if (histories.fished().isPresent()) {
            return histories.now();
        }
        Instant last = Instant.MIN;
        for (LineHistory line : lines) {
            for (DayEvent event : line.events()) {
                last = later(last, event.time().toInstant());
            }
            for (Spell spell : line.spells()) {
                last = later(last, spell.end());
            }
        }
        return last;
    }

    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }

    private Drawing drawn(double width) {
        DayWords words = DayWords.of(peg);
        DayLogWords log = DayLogWords.of(peg);
        List<String> names = lines.stream()
                .map(line -> fitting(words.shortLine(line), LABEL, MOST_LABEL * width))
                .toList();
        List<String> given = lines.stream().map(log::fish).toList();
        double left = widest(names) + GAP;
        double right = width - widest(given) - GAP;
        double bottom = AXIS + ROW * lines.size();
        axis(left, right, bottom);
        for (int i = 0; i < lines.size(); i++) {
            double middle = AXIS + ROW * (i + 0.5) - 2;
            double base = middle + LABEL.sizePoints() * Lettering.CAP_HEIGHT / 2;
            items.add(Marks.text(Role.LEGEND_HEADING, 0, base, Text.Align.START, LABEL, names.get(i)));
            items.add(Marks.text(Role.LEGEND_HEADING, width, base, Text.Align.END, LABEL, given.get(i)));
            row(lines.get(i), left, right, middle);
        }
        double height = legend(width, bottom + 4);
        return new Drawing(items, new View(width, height, 1, 0, 0));
    }

    private double widest(List<String> words) {
        return words.stream()
                .mapToDouble(each -> measure.widthPoints(each, LABEL))
                .max()
                .orElse(0);
    }

    private String fitting(String words, Lettering lettering, double width) {
        String shorter = words;
        while (shorter.length() > 1 && measure.widthPoints(shorter, lettering) > width) {
            shorter = shorter.substring(0, shorter.length() - 2) + "…";
        }
        return shorter;
    }

    private double x(Instant time, double left, double right) {
        double share = (double) Duration.between(from, time).toMillis()
                / Duration.between(from, to).toMillis();
        return left + (right - left) * Math.max(0, Math.min(1, share));
    }

    private void axis(double left, double right, double bottom) {
        double room = measure.widthPoints("00:00", TIME) + GAP;
        double minutes = Duration.between(from, to).toMinutes();
        int step = STEPS[STEPS.length - 1];
        for (int i = STEPS.length - 1; i >= 0; i--) {
            if (STEPS[i] / minutes * (right - left) >= room) {
                step = STEPS[i];
            }
        }
        OffsetDateTime midnight =
                from.atOffset(offset).toLocalDate().atStartOfDay().atOffset(offset);
        for (OffsetDateTime time = midnight; !time.toInstant().isAfter(to); time = time.plusMinutes(step)) {
            if (time.toInstant().isBefore(from)) {
                continue;
            }
            double x = x(time.toInstant(), left, right);
            items.add(Marks.segment(Role.DAY_HOUR, x, AXIS, x, bottom));
            double half = room / 2;
            double middle = Math.max(left + half - GAP, Math.min(right - half + GAP, x));
            items.add(
                    Marks.text(Role.LEGEND_LABEL, middle, AXIS - 4, Text.Align.MIDDLE, TIME, DayLogWords.clock(time)));
        }
    }

    private void row(LineHistory line, double left, double right, double middle) {
        items.add(Marks.segment(Role.LEGEND_RULE, left, middle, right, middle));
        for (Spell spell : line.spells()) {
            double begin = x(spell.start(), left, right);
            double end = Math.max(begin + 1, x(spell.end(), left, right));
            items.add(Marks.rectangle(Role.DAY_FISHED, begin, middle - BAR / 2, end, middle + BAR / 2));
        }
        for (DayEvent event : line.events()) {
            sign(event, x(event.time().toInstant(), left, right), middle);
        }
    }

    private void sign(DayEvent event, double x, double middle) {
        switch (event.kind()) {
            case FISH -> fish(x, middle, event.count());
            case BITE -> items.add(Marks.ring(Role.DAY_BITE, x, middle, FISH - 0.6));
            case LOST, SNAG -> items.add(Marks.cross(Role.DAY_LOST, x, middle, FISH - 0.5));
            case FEED -> items.add(Marks.triangle(Role.DAY_FEED, x, middle + BAR / 2 + 2 * FEED + 1, FEED));
            case START, STOP, NOTE -> {}
        }
    }

    private void fish(double x, double middle, int count) {
        double radius = Math.min(BAR / 2 + 1, FISH * Math.sqrt(count));
        items.add(Marks.disc(Role.DAY_FISH, x, middle, radius));
        // A rim of paper: fish in quick succession stay countable.
        items.add(Marks.ring(Role.DAY_FISH, x, middle, radius));
    }

    /** What the signs mean; returns where it ends. */
    private double legend(double width, double top) {
        double x = 0;
        double y = top;
        for (DayEvent.Kind kind : List.of(
                DayEvent.Kind.FISH, DayEvent.Kind.BITE, DayEvent.Kind.LOST, DayEvent.Kind.FEED, DayEvent.Kind.START)) {
            String words = switch (kind) {
                case LOST -> "lost, or a snag";
                case START -> "fished";
                default -> kind.word();
            };
            double needed = 14 + measure.widthPoints(words, TIME) + GAP;
            if (x > 0 && x + needed > width) {
                x = 0;
                y += LEGEND_ROW;
            }
            double middle = y + LEGEND_ROW / 2;
            if (kind == DayEvent.Kind.START) {
                items.add(Marks.rectangle(Role.DAY_FISHED, x, middle - 3, x + 10, middle + 3));
            } else if (kind == DayEvent.Kind.FEED) {
                items.add(Marks.triangle(Role.DAY_FEED, x + 5, middle + FEED, FEED));
            } else {
                sign(
                        DayEvent.of(
                                from.atOffset(offset),
                                kind,
                                Optional.of(lines.get(0).place())),
                        x + 5,
                        middle);
            }
            items.add(Marks.text(
                    Role.LEGEND_LABEL,
                    x + 14,
                    middle + TIME.sizePoints() * Lettering.CAP_HEIGHT / 2,
                    Text.Align.START,
                    TIME,
                    words));
            x += needed;
        }
        return y + LEGEND_ROW + 2;
    }
}
