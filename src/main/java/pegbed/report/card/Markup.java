package pegbed.report.card;

import pegbed.report.map.SingleLine;

/** HTML in the making: markup of the program's own, and texts in which nothing is markup. */
final class Markup {
    private static final int LONGEST_SIGNS = 1000;

    private final StringBuilder html = new StringBuilder();

    /** Markup that the program itself made. */
    Markup raw(String markup) {
        html.append(markup);
        return this;
    }

    /**
     * An element with a text.
     *
     * @param attributes markup of the program's own, with a blank before each
     * @param text anything
     */
    Markup element(String name, String attributes, String text) {
        html.append('<').append(name).append(attributes).append('>');
        escape(SingleLine.of(text, LONGEST_SIGNS));
        html.append("</").append(name).append(">\n");
        return this;
    }

    private void escape(String text) {
        text.codePoints().forEach(sign -> {
            switch (sign) {
                case '&' -> html.append("&amp;");
                case '<' -> html.append("&lt;");
                case '>' -> html.append("&gt;");
                case '"' -> html.append("&quot;");
                case '\'' -> html.append("&#39;");
                default -> html.appendCodePoint(sign);
            }
        });
    }

    @Override
    public String toString() {
        return html.toString();
    }
}
