package org.deckplanreview.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class PointerTest {

    @Test
    void indexes_come_in_the_order_of_their_numbers_and_before_names() {
        List<Pointer> sorted = List.of("/a/name", "/a/10", "/a/9", "/a", "/a/1a", "").stream()
                .map(Pointer::of)
                .sorted()
                .toList();

        assertThat(sorted).extracting(Pointer::value).containsExactly("", "/a", "/a/9", "/a/10", "/a/1a", "/a/name");
    }

    /** RFC 6901 section 5: the pointer of the member "a/b" is /a~1b, of "m~n" /m~0n. */
    @Test
    void a_member_is_escaped() {
        assertThat(Pointer.ROOT.child("a/b").value()).isEqualTo("/a~1b");
        assertThat(Pointer.ROOT.child("m~n").value()).isEqualTo("/m~0n");
        assertThat(Pointer.ROOT.child("a").child(0).value()).isEqualTo("/a/0");
    }

    @Property(tries = 2000)
    void any_three_pointers_have_one_order(
            @ForAll("tokens") String a, @ForAll("tokens") String b, @ForAll("tokens") String c) {
        Pointer p = Pointer.ROOT.child(a);
        Pointer q = Pointer.ROOT.child(b);
        Pointer r = Pointer.ROOT.child(c);

        assertThat(Integer.signum(p.compareTo(q))).isEqualTo(-Integer.signum(q.compareTo(p)));
        assertThat(p.compareTo(q) == 0).isEqualTo(p.equals(q));
        if (p.compareTo(q) <= 0 && q.compareTo(r) <= 0) {
            assertThat(p.compareTo(r)).isLessThanOrEqualTo(0);
        }
    }

    @Provide
    Arbitrary<String> tokens() {
        return Arbitraries.strings().withChars("019a~/-").ofMaxLength(3);
    }
}
