package org.deckplanreview.formula;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A symbol as its document writes it. Each is made once, so that two that are written alike are the same object. */
public final class Symbol implements Expression {

    /** Letters, an index after an underscore, and a prime, as adjusted values of NDS have. */
    static final String PATTERN = "\\p{L}+(?:_[A-Za-z0-9]+(?:,[A-Za-z0-9]+)*)?'?";

    private static final Pattern PARTS = Pattern.compile("(\\p{L}+)(?:_([A-Za-z0-9,]+))?('?)");
    private static final Map<String, Symbol> KNOWN = new ConcurrentHashMap<>();

    private final String text;
    private final String name;
    private final String index;
    private final boolean primed;

    private Symbol(String text) {
        Matcher m = PARTS.matcher(text);
        if (!m.matches()) {
            throw new IllegalArgumentException("'" + text + "' is not a symbol");
        }
        this.text = text;
        name = m.group(1);
        index = m.group(2) == null ? "" : m.group(2);
        primed = !m.group(3).isEmpty();
    }

    /**
     * The symbol of a text such as {@code f_m,k} or {@code F_b'}.
     *
     * @throws IllegalArgumentException if the text is no symbol
     */
    public static Symbol of(String text) {
        Symbol known = KNOWN.get(text);
        return known != null ? known : KNOWN.computeIfAbsent(text, Symbol::new);
    }

    public String name() {
        return name;
    }

    /** Blank for none. */
    public String index() {
        return index;
    }

    public boolean isPrimed() {
        return primed;
    }

    @Override
    public String toString() {
        return text;
    }
}
