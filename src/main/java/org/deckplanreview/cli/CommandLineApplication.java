package org.deckplanreview.cli;

import io.quarkus.runtime.QuarkusApplication;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;

/** Runs the command that the arguments name. */
class CommandLineApplication implements QuarkusApplication {
    private final CommandLine.IFactory factory;

    CommandLineApplication(CommandLine.IFactory factory) {
        this.factory = factory;
    }

    @Override
    public int run(String... args) {
        CommandLine commands = new CommandLine(DeckPlanReviewCommand.class, factory);
        return commands.setOut(utf8(System.out)).setErr(utf8(System.err)).execute(args);
    }

    /** Whatever the platform's own encoding is. */
    private static PrintWriter utf8(PrintStream stream) {
        return new PrintWriter(stream, true, StandardCharsets.UTF_8);
    }
}
