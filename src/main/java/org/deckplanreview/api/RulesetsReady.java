package org.deckplanreview.api;

import org.deckplanreview.review.Editions;
import org.eclipse.microprofile.health.HealthCheck;
import org.eclipse.microprofile.health.HealthCheckResponse;
import org.eclipse.microprofile.health.Readiness;

/** Ready when there is an edition to review against. */
@Readiness
public class RulesetsReady implements HealthCheck {
    private final Editions editions;

    RulesetsReady(Editions editions) {
        this.editions = editions;
    }

    @Override
    public HealthCheckResponse call() {
        int loaded = editions.headings().size();
        return HealthCheckResponse.named("rulesets")
                .status(loaded > 0)
                .withData("editions", loaded)
                .build();
    }
}
