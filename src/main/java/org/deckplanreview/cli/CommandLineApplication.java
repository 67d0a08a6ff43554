package org.deckplanreview.cli;

import io.quarkus.runtime.QuarkusApplication;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
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
        CommandLine commands;
        try {
            commands = new CommandLine(DeckPlanReviewCommand.class, factory);
        } catch (RuntimeException e) {
            PrintWriter err = utf8(System.err);
            faults(e)
                    .orElseThrow(() -> e)
                    .getMessage()
                    .lines()
                    .map(PlainText::of)
                    .forEach(err::println);
            return ExitCode.SOFTWARE;
        }
        return commands.setOut(utf8(System.out)).setErr(utf8(System.err)).execute(args);
    }

    /** The rulesets' faults, where these are why the commands cannot be made. */
    private static Optional<FaultyRulesets> faults(Throwable e) {
        return Stream.<Throwable>iterate(e, Objects::nonNull, Throwable::getCause)
                .filter(FaultyRulesets.class::isInstance)
                .map(FaultyRulesets.class::cast)
                .findFirst();
    }

    /** Whatever the platform's own encoding is. */
    private static PrintWriter utf8(PrintStream stream) {
        return new PrintWriter(stream, true, StandardCharsets.UTF_8);
    }
}
