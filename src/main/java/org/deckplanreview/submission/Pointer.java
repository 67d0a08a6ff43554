package org.deckplanreview.submission;

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
        String[] a = value.split("/", -1);
        String[] b = other.value.split("/", -1);
        for (int i = 0; i < Math.min(a.length, b.length); i++) {
            int c = compareTokens(a[i], b[i]);
            if (c != 0) {
                return c;
            }
        }
        return Integer.compare(a.length, b.length);
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
        return !token.isEmpty() && token.chars().allMatch(c -> c >= '0' && c <= '9');
    }

    @Override
    public String toString() {
        return value;
    }
}
