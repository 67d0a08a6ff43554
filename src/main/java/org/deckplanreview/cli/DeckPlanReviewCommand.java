package org.deckplanreview.cli;

import io.quarkus.picocli.runtime.annotations.TopCommand;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/**
 * Without a command, the service. What all commands have in common is said here and inherited. Every command object is made
 * whichever one runs, even for {@code --help}, so a command asks a {@code Provider} for what it needs when it runs.
 */
@TopCommand
@Command(
        name = "deck-plan-review",
        description =
                "Reviews the design of a raised timber deck. Without a command it serves HTTP until it is stopped."
                        + " Help on a command: COMMAND --help.",
        mixinStandardHelpOptions = true,
        versionProvider = ServiceVersion.class,
        exitCodeOnInvalidInput = ExitCode.USAGE,
        exitCodeOnExecutionException = ExitCode.SOFTWARE,
        exitCodeListHeading = "Exit codes:%n",
        exitCodeList = {"0:stopped", ExitCode.USAGE_MEANS, ExitCode.SOFTWARE_MEANS},
        scope = ScopeType.INHERIT,
        subcommands = {
            ServeCommand.class,
            ReviewCommand.class,
            CompareCommand.class,
            CheckRulesetsCommand.class,
            GenerateCommand.class
        })
class DeckPlanReviewCommand implements Callable<Integer> {
    static final String RULESETS = "--rulesets";

    @Option(
            names = RULESETS,
            paramLabel = "DIR",
            scope = ScopeType.INHERIT,
            description =
                    "A directory whose rulesets and amendments join those that are built in. Checked the same way.")
    Optional<Path> rulesets = Optional.empty();

    @Override
    public Integer call() {
        return ServeCommand.serve();
    }
}
