package org.deckplanreview.cli;

import io.quarkus.runtime.ApplicationLifecycleManager;
import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;
import java.util.Arrays;
import java.util.List;

/** Starts the service, or runs one command. */
@QuarkusMain
public final class Main {
    private Main() {}

    public static void main(String... args) {
        if (!serves(Arrays.asList(args))) {
            openNoPort();
        }
        ApplicationLifecycleManager.setDefaultExitCodeHandler(Main::exit);
        Quarkus.run(CommandLineApplication.class, args);
    }

    /** A failure to start must not look like a deck that does not comply. */
    private static void exit(int code, Throwable failure) {
        System.exit(failure == null ? code : ExitCode.SOFTWARE);
    }

    private static boolean serves(List<String> args) {
        return args.isEmpty() || args.equals(List.of(ServeCommand.NAME));
    }

    /** A command's standard output is its answer alone, and it works while the service runs. */
    private static void openNoPort() {
        System.setProperty("quarkus.http.host-enabled", "false");
        System.setProperty("quarkus.log.console.stderr", "true");
        System.setProperty("quarkus.log.level", "WARN");
    }
}
