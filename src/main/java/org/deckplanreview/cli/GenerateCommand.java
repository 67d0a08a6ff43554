package org.deckplanreview.cli;

import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import org.deckplanreview.generator.DeckGenerator;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

@Command(
        name = "generate",
        description = "Writes submissions of invented decks, one a line, to try rulesets and comparisons on.",
        exitCodeList = {"0:written", ExitCode.USAGE_MEANS, ExitCode.SOFTWARE_MEANS})
class GenerateCommand implements Callable<Integer> {

    @Spec
    CommandSpec spec;

    @Option(names = "--count", required = true, paramLabel = "N", description = "How many, 1 or more.")
    int count;

    @Option(
            names = "--seed",
            required = true,
            paramLabel = "S",
            description = "A whole number; the same one gives the same decks.")
    long seed;

    @Override
    public Integer call() {
        if (count < 1) {
            throw new ParameterException(spec.commandLine(), "--count is 1 or more, not " + count);
        }
        DeckGenerator generator = new DeckGenerator(seed);
        for (int number = 0; number < count; number++) {
            spec.commandLine().getOut().print(new String(generator.deck(number), StandardCharsets.UTF_8) + "\n");
        }
        spec.commandLine().getOut().flush();
        return 0;
    }
}
