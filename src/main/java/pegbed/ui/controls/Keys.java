package pegbed.ui.controls;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;

/**
 * The keys of the window: what is pressed where, and what it does. Menus, the handling of keys and the table in
 * docs/window.md are made from here.
 */
public enum Keys {
    SAVE(Where.WINDOW, "save", shortcut(KeyCode.S)),
    SAVE_AS(Where.WINDOW, "save under another name", shifted(KeyCode.S)),
    OPEN(Where.WINDOW, "open", shortcut(KeyCode.O)),
    SHELF(Where.WINDOW, "the shelf", shifted(KeyCode.O)),
    NEW_PEG(Where.WINDOW, "new peg", shortcut(KeyCode.N)),
    CARD(Where.WINDOW, "the card: look at it, save it, print it", shortcut(KeyCode.P)),
    RIGS(Where.WINDOW, "rigs", shortcut(KeyCode.R)),
    UNDO(Where.WINDOW, "undo", shortcut(KeyCode.Z)),
    REDO(Where.WINDOW, "redo", shifted(KeyCode.Z), shortcut(KeyCode.Y)),
    LARGE_BUTTONS(Where.WINDOW, "large buttons and back", plain(KeyCode.F8)),
    LEGEND(Where.WINDOW, "the map's legend, and away with it", plain(KeyCode.F7)),
    JOINED_UP(
            Where.WINDOW,
            "the map joined up, straight between the readings without a model, and back",
            plain(KeyCode.F9)),
    BACK_TO_BOX(Where.WINDOW, "back to the reading box, leaving a tool", plain(KeyCode.ESCAPE), plain(KeyCode.F6)),

    ADD_LINE(Where.BOX, "add the reading; in the empty box, take up the next place", plain(KeyCode.ENTER)),
    OLDER_LINE(Where.BOX, "the line before", plain(KeyCode.UP)),
    NEWER_LINE(Where.BOX, "the line after", plain(KeyCode.DOWN)),

    POINT_LEFT(Where.MAP, "move the pointer, or the point that is taken hold of, to the left", bare(KeyCode.LEFT)),
    POINT_RIGHT(Where.MAP, "to the right", bare(KeyCode.RIGHT)),
    POINT_OUT(Where.MAP, "further out", bare(KeyCode.UP)),
    POINT_IN(Where.MAP, "nearer", bare(KeyCode.DOWN)),
    USE_POINTER(
            Where.MAP,
            "take the pointer's place into the box, or put a point there",
            bare(KeyCode.ENTER),
            bare(KeyCode.SPACE)),
    PUT_POINT(Where.MAP, "put a point at the pointer's place", bare(KeyCode.INSERT)),
    TAKE_NEXT(Where.MAP, "take hold of the next point, mark or hazard", bare(KeyCode.PAGE_DOWN)),
    TAKE_PREVIOUS(Where.MAP, "take hold of the one before", bare(KeyCode.PAGE_UP)),
    DELETE_POINT(Where.MAP, "take away what is taken hold of", bare(KeyCode.DELETE), bare(KeyCode.BACK_SPACE)),
    CLOSER(Where.MAP, "go closer", bare(KeyCode.PLUS), bare(KeyCode.EQUALS), bare(KeyCode.ADD)),
    FARTHER(Where.MAP, "go farther", bare(KeyCode.MINUS), bare(KeyCode.SUBTRACT)),
    SHOW_ALL(Where.MAP, "show all", bare(KeyCode.DIGIT0), bare(KeyCode.NUMPAD0), bare(KeyCode.HOME)),
    PAN_LEFT(Where.MAP, "look further to the left", control(KeyCode.LEFT)),
    PAN_RIGHT(Where.MAP, "look further to the right", control(KeyCode.RIGHT)),
    PAN_OUT(Where.MAP, "look further out", control(KeyCode.UP)),
    PAN_IN(Where.MAP, "look nearer", control(KeyCode.DOWN)),

    DELETE_ROW(Where.TABLE, "take away the row", plain(KeyCode.DELETE));

    /** Where the cursor is when a key is pressed. */
    public enum Where {
        WINDOW("anywhere"),
        BOX("reading box"),
        MAP("map"),
        TABLE("readings, place");

        private final String words;

        Where(String words) {
            this.words = words;
        }
    }

    /** A key with the modifiers that belong to it. */
    private record Stroke(KeyCodeCombination keys, String words) {}

    private final Where where;
    private final String what;
    private final List<Stroke> strokes;

    Keys(Where where, String what, Stroke... strokes) {
        this.where = where;
        this.what = what;
        this.strokes = List.of(strokes);
    }

    /** Ctrl, or Command where that is usual. */
    private static Stroke shortcut(KeyCode code) {
        return new Stroke(new KeyCodeCombination(code, KeyCombination.SHORTCUT_DOWN), "Ctrl+" + name(code));
    }

    private static Stroke shifted(KeyCode code) {
        return new Stroke(
                new KeyCodeCombination(code, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN),
                "Ctrl+Shift+" + name(code));
    }

    /** Ctrl on every system. */
    private static Stroke control(KeyCode code) {
        return new Stroke(
                new KeyCodeCombination(code, KeyCombination.CONTROL_DOWN, KeyCombination.SHIFT_ANY),
                "Ctrl+" + name(code));
    }

    /** Whatever else is held down. */
    private static Stroke plain(KeyCode code) {
        return new Stroke(
                new KeyCodeCombination(
                        code,
                        KeyCombination.SHIFT_ANY,
                        KeyCombination.CONTROL_ANY,
                        KeyCombination.ALT_ANY,
                        KeyCombination.META_ANY),
                name(code));
    }

    /** Without Ctrl, Alt or Command. */
    private static Stroke bare(KeyCode code) {
        return new Stroke(new KeyCodeCombination(code, KeyCombination.SHIFT_ANY), name(code));
    }

    private static String name(KeyCode code) {
        return switch (code) {
            case ESCAPE -> "Escape";
            case PLUS -> "+";
            case EQUALS -> "=";
            case MINUS -> "-";
            case ADD -> "+ of the number pad";
            case SUBTRACT -> "- of the number pad";
            case NUMPAD0 -> "0 of the number pad";
            default -> code.getName();
        };
    }

    /** Whether this is what was pressed. */
    public boolean matches(KeyEvent event) {
        return strokes.stream().anyMatch(stroke -> stroke.keys().match(event));
    }

    /** What was pressed somewhere; empty if nothing that means anything there. */
    public static Optional<Keys> pressed(Where where, KeyEvent event) {
        return Arrays.stream(values())
                .filter(key -> key.where == where && key.matches(event))
                .findFirst();
    }

    /** The first of the keys that do this, for a menu. */
    public KeyCombination accelerator() {
        return strokes.get(0).keys();
    }

    /** The first of the keys that do this, in words, such as {@code Ctrl+S}. */
    public String words() {
        return strokes.get(0).words();
    }

    /** All keys as a table in Markdown, a line each. */
    public static List<String> table() {
        List<String> rows = Arrays.stream(values())
                .map(key -> "| " + key.where.words + " | "
                        + key.strokes.stream().map(Stroke::words).collect(Collectors.joining(", ")) + " | " + key.what
                        + " |")
                .toList();
        List<String> table = new ArrayList<>(List.of("| Where | Keys | What they do |", "|---|---|---|"));
        table.addAll(rows);
        return table;
    }
}
