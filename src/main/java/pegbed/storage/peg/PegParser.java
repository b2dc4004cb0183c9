package pegbed.storage.peg;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.IntFunction;
import java.util.regex.Pattern;
import pegbed.model.BankPoint;
import pegbed.model.Reading;

/**
 * One pass over the text of a peg file. Whatever stands whole before the text stops being JSON is in the draft; a
 * number counts as whole only when something follows it, since {@code 1.3} may be the start of {@code 1.37}.
 */
final class PegParser {
    /** What an unfinished word or number at the end of a broken file has not got. */
    private static final Pattern MARKS = Pattern.compile("[\\[\\]{},:\"\n]");

    private final String text;
    private final int base;
    private final Damage damage;
    private final JsonParser parser;
    private final PegDraft draft;

    /** Whether the peg was read to its closing brace. */
    private boolean whole;

    /**
     * What a pass gave.
     *
     * @param draft what stands whole
     * @param breakage where the text stopped being JSON; empty for a sound file
     */
    record Pass(PegDraft draft, Optional<Breakage> breakage) {}

    /**
     * Where a text stopped being JSON.
     *
     * @param line the line, 1 for the first
     * @param atEnd whether the text simply ended too soon
     */
    record Breakage(int line, boolean atEnd) {}

    /** What to do with a member that is a list or an object of its own, and the token with which it opens. */
    private record Step(JsonToken opens, Action action) {}

    private interface Action {
        void run() throws IOException;
    }

    private PegParser(String text, int base, Damage damage, JsonParser parser) {
        this.text = text;
        this.base = base;
        this.damage = damage;
        this.parser = parser;
        draft = new PegDraft(new Fields(damage, "the peg", 0));
    }

    static Pass pass(String text, Damage damage) {
        try (JsonParser parser = Json.STRICT.createParser(text)) {
            PegParser pass = new PegParser(text, 0, damage, parser);
            try {
                pass.peg();
                return new Pass(pass.draft, Optional.empty());
            } catch (JsonProcessingException e) {
                JsonLocation location = e.getLocation() == null ? parser.currentLocation() : e.getLocation();
                int offset = (int) Math.max(0, Math.min(location.getCharOffset(), text.length()));
                boolean atEnd = !pass.whole
                        && (e instanceof JsonEOFException
                                || !MARKS.matcher(text)
                                        .region(offset, text.length())
                                        .find());
                return new Pass(pass.draft, Optional.of(new Breakage(location.getLineNr(), atEnd)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("Reading from a text can't fail.", e);
        }
    }

    /**
     * Reads one object that stands alone.
     *
     * @param object its text
     * @param base where that text starts in the file
     * @param what the object in a sentence
     * @return its members; empty if the text is not one object
     */
    static Optional<Fields> alone(String object, int base, String what, Damage damage) {
        try (JsonParser parser = Json.STRICT.createParser(object)) {
            PegParser pass = new PegParser(object, base, damage, parser);
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                return Optional.empty();
            }
            Fields fields = new Fields(damage, what, base);
            pass.members(fields, Map.of());
            return parser.nextToken() == null ? Optional.of(fields) : Optional.empty();
        } catch (JsonProcessingException e) {
            return Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException("Reading from a text can't fail.", e);
        }
    }

    /**
     * Reads the objects of a list that stands alone.
     *
     * @param list its text, which is JSON
     * @param base where that text starts in the file
     * @param what an object of it in a sentence, by its number
     * @throws IllegalArgumentException if something in it is beyond the bounds of {@link Json}
     */
    static List<Fields> list(String list, int base, IntFunction<String> what, Damage damage) {
        try (JsonParser parser = Json.STRICT.createParser(list)) {
            PegParser pass = new PegParser(list, base, damage, parser);
            List<Fields> objects = new ArrayList<>();
            parser.nextToken();
            pass.objects(what, objects::add);
            return objects;
        } catch (JsonProcessingException e) {
            // It was passed over unread before, and only reading meets the bounds.
            throw new IllegalArgumentException(
                    "It holds a text, number or nesting longer than a peg file may: " + Fields.shortened(list, 300), e);
        } catch (IOException e) {
            throw new UncheckedIOException("Reading from a text can't fail.", e);
        }
    }

    /**
     * Uses an object that was read; notes what it says if it makes no sense.
     *
     * @param json how it stands in the file
     */
    static void use(Fields fields, String json, Consumer<Fields> use) {
        try {
            if (!fields.repeats().isEmpty()) {
                throw new IllegalArgumentException(
                        String.join(", ", fields.repeats().keySet()) + " stands twice.");
            }
            use.accept(fields);
        } catch (IllegalArgumentException e) {
            fields.trouble(e.getMessage() + " Lost: " + Fields.shortened(json, 300));
        }
    }

    private void peg() throws IOException {
        if (parser.nextToken() != JsonToken.START_OBJECT) {
            return;
        }
        members(
                draft.top,
                Map.of(
                        "near_bank", list(() -> bank(i -> "point " + i + " of the near bank", draft.near)),
                        "far_bank", list(() -> bank(i -> "point " + i + " of the far bank", draft.far)),
                        "islands", list(this::islands),
                        "marks", list(() -> objects(i -> "mark " + i, draft::addMark)),
                        "hazards", list(() -> objects(i -> "hazard " + i, this::hazard)),
                        "wishes", new Step(JsonToken.START_OBJECT, this::wishes),
                        "visits", list(this::visits)));
        whole = true;
        if (parser.nextToken() != null) {
            damage.add(offset(), "There is more text after the end of the peg.");
        }
    }

    private static Step list(Action action) {
        return new Step(JsonToken.START_ARRAY, action);
    }

    private void bank(IntFunction<String> what, List<BankPoint> points) throws IOException {
        objects(what, fields -> points.add(ElementParser.bankPoint(fields)));
    }

    private void hazard(Fields fields) {
        draft.hazards.add(ElementParser.hazard(fields));
    }

    private void islands() throws IOException {
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            int number = draft.islands.size() + 1;
            if (opens(JsonToken.START_ARRAY, "island " + number)) {
                List<BankPoint> ring = new ArrayList<>();
                draft.islands.add(ring);
                bank(i -> "point " + i + " of island " + number, ring);
            }
        }
    }

    private void wishes() throws IOException {
        WishesDraft wishes = new WishesDraft(new Fields(damage, "the wishes", offset()));
        draft.wishes = wishes;
        Map<String, Step> lists = new HashMap<>();
        for (String name : WishesDraft.LISTS) {
            lists.put(name, list(() -> objects(i -> "item " + i + " of " + name, item -> wishes.add(name, item))));
        }
        members(wishes.fields, lists);
    }

    private void visits() throws IOException {
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            if (opens(JsonToken.START_OBJECT, "visit " + (draft.visits.size() + 1))) {
                PegDraft.VisitDraft visit = draft.addVisit(damage, offset());
                members(visit.fields, Map.of("readings", list(this::readings), "events", list(this::events)));
                visit.isWhole = true;
            }
        }
    }

    private void readings() throws IOException {
        int visit = draft.visits.size();
        draft.lastVisit().hasReadings = true;
        List<Reading> readings = draft.lastVisit().readings;
        objects(i -> "reading " + i + " of visit " + visit, each -> readings.add(ElementParser.reading(each)));
    }

    private void events() throws IOException {
        int visit = draft.visits.size();
        objects(i -> "event " + i + " of visit " + visit, draft::addEvent);
    }

    /** Reads the list in which the parser stands, an object each; leaves the parser at its end. */
    private void objects(IntFunction<String> what, Consumer<Fields> use) throws IOException {
        for (int number = 1; parser.nextToken() != JsonToken.END_ARRAY; number++) {
            if (opens(JsonToken.START_OBJECT, what.apply(number))) {
                object(what.apply(number), use);
            }
        }
    }

    /** Whether an item of a list is what it should be. Notes and passes over one that is not. */
    private boolean opens(JsonToken token, String what) throws IOException {
        if (parser.currentToken() == token) {
            return true;
        }
        String right = token == JsonToken.START_OBJECT ? "an object {...}." : "a list [...].";
        damage.add(offset(), Damage.capital(what) + " must be " + right);
        parser.skipChildren();
        return false;
    }

    /** Reads one object to its end and uses it. */
    private void object(String what, Consumer<Fields> use) throws IOException {
        int start = offset();
        Fields fields = new Fields(damage, what, start);
        members(fields, Map.of());
        use(fields, text.substring(start - base, end() - base), use);
    }

    /** Reads the members of the object at whose brace the parser stands; leaves the parser at its closing brace. */
    private void members(Fields into, Map<String, Step> steps) throws IOException {
        Set<String> seen = new HashSet<>();
        parser.nextToken();
        while (parser.currentToken() == JsonToken.FIELD_NAME) {
            String name = parser.currentName();
            parser.nextToken();
            Step step = steps.get(name);
            if (!seen.add(name)) {
                into.repeat(name, offset());
                parser.skipChildren();
                parser.nextToken();
            } else if (step == null) {
                Fields.Value value = value();
                if (!value.kind().isNumeric()) {
                    into.put(name, value);
                    parser.nextToken();
                } else {
                    parser.nextToken();
                    into.put(name, value);
                }
            } else {
                if (opens(step.opens(), name)) {
                    step.action().run();
                }
                parser.nextToken();
            }
        }
    }

    private Fields.Value value() throws IOException {
        JsonToken kind = parser.currentToken();
        int start = offset();
        String words = "";
        if (kind == JsonToken.VALUE_STRING) {
            words = parser.getText();
        } else if (kind.isStructStart()) {
            parser.skipChildren();
        }
        return new Fields.Value(kind, words, text.substring(start - base, end() - base), start);
    }

    private int offset() {
        return base + (int) parser.currentTokenLocation().getCharOffset();
    }

    private int end() throws IOException {
        parser.finishToken();
        return base + (int) parser.currentLocation().getCharOffset();
    }
}
