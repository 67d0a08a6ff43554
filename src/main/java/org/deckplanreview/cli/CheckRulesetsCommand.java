package org.deckplanreview.cli;

import jakarta.inject.Provider;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.deckplanreview.rendering.text.PlainText;
import org.deckplanreview.review.RulesetChecker;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

@Command(
        name = CheckRulesetsCommand.NAME,
        description = "Checks rulesets and runs the cases beside them.",
        exitCodeList = {"0:all is well", "1:there are faults", ExitCode.USAGE_MEANS, ExitCode.SOFTWARE_MEANS})
class CheckRulesetsCommand implements Callable<Integer> {
    static final String NAME = "check-rulesets";

    private final Provider<RulesetChecker> checker;

    @ParentCommand
    DeckPlanReviewCommand parent;

    @Spec
    CommandSpec spec;

    @Parameters(
            arity = "0..1",
            paramLabel = "DIRECTORY",
            description =
                    "Where the rulesets are; if left out, those that are built in, with those that --rulesets names.")
    Optional<Path> directory;

    CheckRulesetsCommand(Provider<RulesetChecker> checker) {
        this.checker = checker;
    }

    @Override
    public Integer call() {
        List<String> faults = checker.get().check(directory, parent.rulesets);
        faults.forEach(f -> spec.commandLine().getErr().println(PlainText.of(f)));
        if (faults.isEmpty()) {
            spec.commandLine().getOut().println("All rulesets are well.");
            return 0;
        }
        return ExitCode.RULESETS_FAULTY;
    }
}
