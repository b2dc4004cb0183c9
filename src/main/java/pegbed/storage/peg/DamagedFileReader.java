package pegbed.storage.peg;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pegbed.model.BankPoint;

/**
 * Reads a damaged peg file line by line, as {@link PegWriter} lays it out: a line for each reading, bank point, mark,
 * hazard, event, wanted line and rig template, and for each other member. Each line is read by itself, so that a broken
 * one costs no other, whatever brackets are missing; a broken line is noted and left out. A file laid out otherwise
 * gives an empty draft.
 */
final class DamagedFileReader {
    private static final Pattern OPENER = Pattern.compile("\"(\\w+)\": ?[\\[{]");

    private static final List<String> LISTS =
            List.of("near_bank", "far_bank", "islands", "marks", "hazards", "wishes", "visits", "readings", "events");

    /** Indents at which the writer sets the closing bracket of a visit, and of a member of the peg. */
    private static final int VISIT_INDENT = 4;

    private static final int TOP_INDENT = 2;

    private final String text;
    private final Damage damage;
    private final PegDraft draft;
    private final WishesDraft wishes;

    /** The list or object whose lines are being read; empty between them. */
    private String section = "";

    /** Lines of a later version's member are passed over down to this indent; -1 outside such a member. */
    private int skippedIndent = -1;

    /** Whether the peg's own brace was met. */
    private boolean isOpen;

    /** Whether the list of visits is being read, and in it a visit. */
    private boolean inVisits;

    private boolean inVisit;

    /** Number of the line's object in its list. */
    private int number;

    DamagedFileReader(String text, Damage damage) {
        this.text = text;
        this.damage = damage;
        draft = new PegDraft(new Fields(damage, "the peg", 0));
        wishes = new WishesDraft(new Fields(damage, "the wishes", 0));
        draft.wishes = wishes;
    }

    PegDraft draft() {
        int start = 0;
        while (start < text.length()) {
            int end = text.indexOf('\n', start);
            boolean cut = end < 0;
            end = cut ? text.length() : end;
            String line = text.substring(start, end);
            String words = line.strip();
            String item = words.endsWith(",") ? words.substring(0, words.length() - 1) : words;
            if (!line.isBlank()) {
                line(item, start + line.indexOf(words), line.indexOf(words), cut);
            }
            start = end + 1;
        }
        return draft;
    }

    /**
     * Reads one line.
     *
     * @param item its words, without a comma after them
     * @param offset where they start
     * @param indent how many letters stand before them
     * @param cut whether the file breaks off in it
     */
    private void line(String item, int offset, int indent, boolean cut) {
        if (skippedIndent >= 0) {
            boolean over = indent <= skippedIndent;
            skippedIndent = over ? -1 : skippedIndent;
            if (!over || item.startsWith("]") || item.startsWith("}")) {
                return;
            }
        }
        Matcher opener = OPENER.matcher(item);
        if (item.equals("{")) {
            open(offset);
        } else if (item.equals("[") && section.equals("islands")) {
            draft.islands.add(new ArrayList<>());
            number = 0;
        } else if (item.equals("]") || item.equals("}")) {
            close(item, indent);
        } else if (opener.matches()) {
            enter(opener.group(1), offset, indent);
        } else if (!element(item, offset) && (cut || !member(item, offset))) {
            damage.add(offset, "This line is not JSON and was left out: " + Fields.shortened(item, 300));
        }
    }

    /** A brace alone opens the peg, the first time, or a visit. */
    private void open(int offset) {
        if (isOpen) {
            newVisit(offset);
        }
        isOpen = true;
    }

    private void newVisit(int offset) {
        draft.addVisit(damage, offset);
        section = "";
        number = 0;
        inVisits = true;
        inVisit = true;
    }

    private void close(String bracket, int indent) {
        if (indent <= TOP_INDENT) {
            section = "";
            inVisits = false;
            inVisit = false;
        } else if (bracket.equals("}") && indent <= VISIT_INDENT) {
            section = "";
            inVisit = false;
        } else if (WishesDraft.LISTS.contains(section)) {
            section = "wishes";
        } else if (!section.equals("islands")) {
            section = "";
        }
    }

    private void enter(String name, int offset, int indent) {
        number = 0;
        if (!LISTS.contains(name) && !WishesDraft.LISTS.contains(name)) {
            damage.add(offset, name + " runs over several lines and was left out.");
            skippedIndent = indent;
            return;
        }
        if (name.equals("readings") || name.equals("events")) {
            needVisit(offset);
        } else {
            inVisits = name.equals("visits");
            inVisit = false;
        }
        section = name;
    }

    private void needVisit(int offset) {
        if (!inVisit) {
            newVisit(offset);
            draft.lastVisit().fields.trouble("its beginning is lost.");
        }
    }

    /** Reads an object on a line of its own; false if this is none. */
    private boolean element(String item, int offset) {
        if (!item.startsWith("{")) {
            return false;
        }
        Optional<Fields> read = PegParser.alone(item, offset, what(), damage);
        if (read.isEmpty()) {
            number++;
            return false;
        }
        Fields fields = read.get();
        boolean isReading = fields.has("depth_m") && fields.has("distance_m");
        if (section.equals("readings") || (isReading && !inOtherList())) {
            needVisit(offset);
            PegDraft.VisitDraft visit = draft.lastVisit();
            String what = "reading " + (number + 1) + " of visit " + draft.visits.size();
            PegParser.use(fields.named(what), item, each -> visit.readings.add(ElementParser.reading(each)));
        } else if (section.equals("events") || (fields.has("event") && fields.has("time") && !inOtherList())) {
            needVisit(offset);
            String what = "event " + (number + 1) + " of visit " + draft.visits.size();
            PegParser.use(fields.named(what), item, draft::addEvent);
        } else {
            PegParser.use(fields, item, this::place);
        }
        number++;
        return true;
    }

    private boolean inOtherList() {
        return List.of("near_bank", "far_bank", "islands", "marks", "hazards").contains(section);
    }

    private String what() {
        return "item " + (number + 1) + (section.isEmpty() ? "" : " of " + section);
    }

    private void place(Fields fields) {
        switch (section) {
            case "near_bank" -> draft.near.add(ElementParser.bankPoint(fields));
            case "far_bank" -> draft.far.add(ElementParser.bankPoint(fields));
            case "islands" -> ring().add(ElementParser.bankPoint(fields));
            case "marks" -> draft.addMark(fields);
            case "hazards" -> draft.hazards.add(ElementParser.hazard(fields));
            case "fixed_lines", "forbidden_lines", "rig_templates" -> wishes.add(section, fields);
            default -> throw new IllegalArgumentException("what it belongs to is lost.");
        }
    }

    private List<BankPoint> ring() {
        if (draft.islands.isEmpty()) {
            draft.islands.add(new ArrayList<>());
        }
        return draft.islands.get(draft.islands.size() - 1);
    }

    /** Reads a member on a line of its own; false if this is none. */
    private boolean member(String item, int offset) {
        Optional<Fields> read = PegParser.alone("{" + item + "}", offset - 1, "a line", damage);
        if (read.isEmpty() || read.get().names().size() != 1) {
            return false;
        }
        String name = read.get().names().get(0);
        Fields into = draft.top;
        if (inVisits) {
            needVisit(offset);
            into = draft.lastVisit().fields;
        } else if (section.equals("wishes")) {
            into = wishes.fields;
        }
        Fields.Value value = read.get().value(name);
        boolean isList = LISTS.contains(name) || (section.equals("wishes") && WishesDraft.LISTS.contains(name));
        if (!isList) {
            into.add(name, value);
        } else if (!List.of("[]", "{}").contains(value.json())) {
            return false;
        }
        return true;
    }
}
