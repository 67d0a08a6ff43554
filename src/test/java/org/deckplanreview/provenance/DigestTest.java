package org.deckplanreview.provenance;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Example digests of SHA-256 that NIST publishes with FIPS 180-4, and that of the empty message. */
class DigestTest {

    @ParameterizedTest
    @CsvSource({
        "'', e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
        "abc, ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
        "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq, "
                + "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1"
    })
    void digests_are_those_of_the_standard(String message, String digest) {
        assertThat(Digest.sha256(message.getBytes(StandardCharsets.UTF_8))).isEqualTo("sha256:" + digest);
        assertThat(Digest.sha256(message)).isEqualTo("sha256:" + digest);
    }
}
