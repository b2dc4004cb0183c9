package pegbed.storage.peg;

import java.util.ArrayList;
import java.util.List;

/** What is wrong with a file that is being read: where the first trouble is, and what is lost. */
final class Damage {
    /** More entries than this tell a person nothing. */
    private static final int MOST_ENTRIES = 100;

    private final String text;
    private final List<String> lost = new ArrayList<>();
    private int further;
    private int firstOffset = Integer.MAX_VALUE;
    private String firstSentence = "";

    Damage(String text) {
        this.text = text;
    }

    /**
     * Notes one trouble.
     *
     * @param offset where in the text
     * @param sentence what is wrong there, a whole sentence
     */
    void add(int offset, String sentence) {
        if (offset < firstOffset) {
            firstOffset = offset;
            firstSentence = sentence;
        }
        if (lost.size() < MOST_ENTRIES) {
            lost.add(capital(place(offset)) + ": " + sentence);
        } else {
            further++;
        }
    }

    boolean isEmpty() {
        return lost.isEmpty();
    }

    String where() {
        return place(firstOffset);
    }

    String why() {
        return firstSentence;
    }

    List<String> lost() {
        List<String> all = new ArrayList<>(lost);
        if (further > 0) {
            all.add("And " + further + " more.");
        }
        return all;
    }

    private String place(int offset) {
        int end = Math.min(Math.max(offset, 0), text.length());
        int line = 1;
        int lineStart = 0;
        for (int i = 0; i < end; i++) {
            if (text.charAt(i) == '\n') {
                line++;
                lineStart = i + 1;
            }
        }
        return "line " + line + ", column " + (end - lineStart + 1);
    }

    static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
