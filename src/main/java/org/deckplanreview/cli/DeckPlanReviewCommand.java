package org.deckplanreview.cli;

import io.quarkus.picocli.runtime.annotations.TopCommand;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** Without a command, the service. */
@TopCommand
@Command(
        name = "deck-plan-review",
        description =
                "Reviews the design of a raised timber deck. Without a command it serves HTTP until it is stopped.",
        mixinStandardHelpOptions = true,
        versionProvider = ServiceVersion.class,
        exitCodeOnInvalidInput = ExitCode.USAGE,
        exitCodeOnExecutionException = ExitCode.SOFTWARE,
        subcommands = {ServeCommand.class, ReviewCommand.class, CheckRulesetsCommand.class})
class DeckPlanReviewCommand implements Callable<Integer> {
    @Override
    public Integer call() {
        return ServeCommand.serve();
    }
}
