package org.deckplanreview.cli;

import io.quarkus.runtime.StartupEvent;
import io.quarkus.runtime.annotations.CommandLineArguments;
import io.quarkus.runtime.configuration.ConfigurationException;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Provider;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.deckplanreview.rendering.text.PlainText;
import org.deckplanreview.review.Editions;
import org.deckplanreview.review.FaultyRulesets;

/** Loads the rulesets before the service opens its port. Rulesets with faults end the process, with the faults printed. */
class RulesetsAtStart {

    void load(@Observes StartupEvent event, @CommandLineArguments String[] args, Provider<Editions> editions) {
        if (!Main.serves(RulesetsOption.of(Arrays.asList(args)).others())) {
            return;
        }
        try {
            editions.get();
        } catch (RuntimeException e) {
            FaultyRulesets faulty = FaultyRulesets.among(e).orElseThrow(() -> e);
            // Quarkus prints the message of this exception alone, without a stack trace.
            throw new ConfigurationException(
                    faulty.getMessage().lines().map(PlainText::of).collect(Collectors.joining("\n")));
        }
    }
}
