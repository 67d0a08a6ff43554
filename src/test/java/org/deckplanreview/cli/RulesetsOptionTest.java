package org.deckplanreview.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RulesetsOptionTest {

    @Test
    void the_directory_may_follow_the_option_or_an_equals_sign_before_or_after_the_command() {
        RulesetsOption read = new RulesetsOption(Optional.of("mine"), List.of("review", "deck.json"));
        assertThat(RulesetsOption.of(List.of("--rulesets", "mine", "review", "deck.json")))
                .isEqualTo(read);
        assertThat(RulesetsOption.of(List.of("review", "--rulesets=mine", "deck.json")))
                .isEqualTo(read);
    }

    @Test
    void without_it_the_arguments_stay_as_they_are() {
        assertThat(RulesetsOption.of(List.of("serve")))
                .isEqualTo(new RulesetsOption(Optional.empty(), List.of("serve")));
    }

    @Test
    void an_option_without_a_directory_is_left_for_the_command_to_refuse() {
        assertThat(RulesetsOption.of(List.of("review", "--rulesets")).others()).containsExactly("review", "--rulesets");
    }
}
