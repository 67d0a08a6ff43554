package org.deckplanreview.kernel;

/** A JSON Pointer (RFC 6901) into the submission. The whole document is the empty string. */
public record Pointer(String value) implements Comparable<Pointer> {

    public static final Pointer ROOT = new Pointer("");

    public static Pointer of(String value) {
        return new Pointer(value);
    }

    public Pointer child(String member) {
        return new Pointer(value + "/" + member.replace("~", "~0").replace("/", "~1"));
    }

    public Pointer child(int index) {
        return new Pointer(value + "/" + index);
    }

    @Override
    public int compareTo(Pointer other) {
        int here = 0;
        int there = 0;
        while (here < value.length() && there < other.value.length()) {
            int hereEnd = tokenEnd(value, here);
            int thereEnd = tokenEnd(other.value, there);
            int c = compareTokens(value.substring(here + 1, hereEnd), other.value.substring(there + 1, thereEnd));
            if (c != 0) {
                return c;
            }
            here = hereEnd;
            there = thereEnd;
        }
        return Integer.compare(value.length() - here, other.value.length() - there);
    }

    /** Where the token that begins with the stroke at a place ends. */
    private static int tokenEnd(String pointer, int stroke) {
        int next = pointer.indexOf('/', stroke + 1);
        return next < 0 ? pointer.length() : next;
    }

    /** Indexes come before names, by their number; with names between them there would be no order of three. */
    private static int compareTokens(String a, String b) {
        if (isIndex(a) != isIndex(b)) {
            return isIndex(a) ? -1 : 1;
        }
        boolean byLength = isIndex(a) && a.length() != b.length();
        return byLength ? Integer.compare(a.length(), b.length()) : a.compareTo(b);
    }

    private static boolean isIndex(String token) {
        for (int i = 0; i < token.length(); i++) {
            if (token.charAt(i) < '0' || token.charAt(i) > '9') {
                return false;
            }
        }
        return !token.isEmpty();
    }

    @Override
    public String toString() {
        return value;
    }
}
