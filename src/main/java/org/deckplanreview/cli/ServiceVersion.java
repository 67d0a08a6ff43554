package org.deckplanreview.cli;

import jakarta.enterprise.context.Dependent;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import picocli.CommandLine.IVersionProvider;

@Dependent
class ServiceVersion implements IVersionProvider {
    private final String version;

    ServiceVersion(@ConfigProperty(name = "quarkus.application.version") String version) {
        this.version = version;
    }

    @Override
    public String[] getVersion() {
        return new String[] {version};
    }
}
