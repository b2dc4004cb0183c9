package pegbed.storage;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.IntFunction;
import pegbed.model.BankPoint;
import pegbed.model.Reading;

/**
 * One pass over the text of a peg file. Whatever stands whole before the text stops being JSON is in the draft; a number
 * counts as whole only when something follows it, since {@code 1.3} may be the start of {@code 1.37}.
 */
final class PegParser {
    private final String text;
    private final Damage damage;
    private final JsonParser parser;
    private final PegDraft draft;

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

    private PegParser(String text, Damage damage, JsonParser parser) {
        this.text = text;
        this.damage = damage;
        this.parser = parser;
        draft = new PegDraft(new Fields(text, damage, "the peg", 0));
    }

    static Pass pass(JsonFactory factory, String text, Damage damage) {
        try (JsonParser parser = factory.createParser(text)) {
            PegParser pass = new PegParser(text, damage, parser);
            try {
                pass.peg();
                return new Pass(pass.draft, Optional.empty());
            } catch (JsonProcessingException e) {
                JsonLocation location = e.getLocation() == null ? parser.currentLocation() : e.getLocation();
                return new Pass(
                        pass.draft, Optional.of(new Breakage(location.getLineNr(), e instanceof JsonEOFException)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("Reading from a text can't fail.", e);
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
        if (parser.nextToken() != null) {
            damage.add(offset(), "There is more text after the end of the peg.");
        }
    }

    private static Step list(Action action) {
        return new Step(JsonToken.START_ARRAY, action);
    }

    private void bank(IntFunction<String> what, List<BankPoint> points) throws IOException {
        objects(what, fields -> points.add(Elements.bankPoint(fields)));
    }

    private void hazard(Fields fields) {
        draft.hazards.add(Elements.hazard(fields));
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
        object("the wishes", fields -> draft.wishes = Elements.wishes(fields));
    }

    private void visits() throws IOException {
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            int number = draft.visits.size() + 1;
            if (opens(JsonToken.START_OBJECT, "visit " + number)) {
                List<Reading> readings = new ArrayList<>();
                Fields fields = new Fields(text, damage, "visit " + number, offset());
                draft.visits.add(new PegDraft.VisitDraft(fields, readings));
                Action action = () -> objects(
                        i -> "reading " + i + " of visit " + number, each -> readings.add(Elements.reading(each)));
                members(fields, Map.of("readings", list(action)));
            }
        }
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

    /** Reads one object to its end and uses it; notes what it says if it makes no sense. */
    private void object(String what, Consumer<Fields> use) throws IOException {
        int start = offset();
        Fields fields = new Fields(text, damage, what, start);
        members(fields, Map.of());
        try {
            if (!fields.repeats().isEmpty()) {
                throw new IllegalArgumentException(
                        String.join(", ", fields.repeats().keySet()) + " stands twice.");
            }
            use.accept(fields);
        } catch (IllegalArgumentException e) {
            int end = end();
            fields.trouble(e.getMessage() + " Lost: " + Fields.shortened(text.substring(start, end), 300));
        }
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
                parser.nextToken();
                into.put(name, value);
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
        return new Fields.Value(kind, words, start, end());
    }

    private int offset() {
        return (int) parser.currentTokenLocation().getCharOffset();
    }

    private int end() throws IOException {
        parser.finishToken();
        return (int) parser.currentLocation().getCharOffset();
    }
}
