package org.deckplanreview.cli;

import io.quarkus.runtime.ApplicationLifecycleManager;
import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;
import java.util.Arrays;
import java.util.List;
import org.deckplanreview.review.ReviewServices;

/** Starts the service, or runs one command. */
@QuarkusMain
public final class Main {
    private Main() {}

    public static void main(String... args) {
        RulesetsOption rulesets = RulesetsOption.of(Arrays.asList(args));
        if (!serves(rulesets.others())) {
            openNoPort();
        }
        if (!rulesets.others().contains(CheckRulesetsCommand.NAME)) {
            rulesets.directory().ifPresent(directory -> System.setProperty(ReviewServices.DIRECTORY, directory));
        }
        ApplicationLifecycleManager.setDefaultExitCodeHandler(Main::exit);
        Quarkus.run(CommandLineApplication.class, args);
    }

    /** A failure to start must not look like a deck that does not comply. */
    private static void exit(int code, Throwable failure) {
        System.exit(failure == null ? code : ExitCode.SOFTWARE);
    }

    /** Whether the service runs, not a command. */
    static boolean serves(List<String> args) {
        return args.isEmpty() || args.equals(List.of(ServeCommand.NAME));
    }

    /** A command's standard output is its answer alone, and it works while the service runs. */
    private static void openNoPort() {
        System.setProperty("quarkus.http.host-enabled", "false");
        System.setProperty("quarkus.log.console.stderr", "true");
        System.setProperty("quarkus.log.level", "WARN");
    }
}
