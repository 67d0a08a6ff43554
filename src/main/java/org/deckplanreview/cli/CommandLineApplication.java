package org.deckplanreview.cli;

import io.quarkus.runtime.QuarkusApplication;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.deckplanreview.rendering.text.PlainText;
import org.deckplanreview.review.FaultyRulesets;
import picocli.CommandLine;

/** Runs the command that the arguments name. */
class CommandLineApplication implements QuarkusApplication {
    private final CommandLine.IFactory factory;

    CommandLineApplication(CommandLine.IFactory factory) {
        this.factory = factory;
    }

    @Override
    public int run(String... args) {
        return new CommandLine(DeckPlanReviewCommand.class, factory)
                .setOut(utf8(System.out))
                .setErr(utf8(System.err))
                .setExecutionExceptionHandler(CommandLineApplication::failed)
                .execute(args);
    }

    /** Prints the faults of rulesets; what else fails is for picocli to print. */
    private static int failed(Exception failure, CommandLine command, CommandLine.ParseResult arguments)
            throws Exception {
        FaultyRulesets faulty = FaultyRulesets.among(failure).orElseThrow(() -> failure);
        faulty.getMessage().lines().map(PlainText::of).forEach(command.getErr()::println);
        return ExitCode.SOFTWARE;
    }

    /** Whatever the platform's own encoding is. */
    private static PrintWriter utf8(PrintStream stream) {
        return new PrintWriter(stream, true, StandardCharsets.UTF_8);
    }
}
