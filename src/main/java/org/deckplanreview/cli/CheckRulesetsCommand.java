package org.deckplanreview.cli;

import jakarta.inject.Provider;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.deckplanreview.rendering.text.PlainText;
import org.deckplanreview.review.RulesetChecker;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

@Command(
        name = CheckRulesetsCommand.NAME,
        description = "Checks rulesets and runs the cases beside them.",
        exitCodeList = {
            "0:all rulesets are valid and all cases passed",
            "1:there are faults",
            ExitCode.USAGE_MEANS,
            ExitCode.SOFTWARE_MEANS
        })
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

    @Option(
            names = "--only",
            paramLabel = "WHICH",
            description =
                    "Run only the cases of a file, such as common/cases/fall/fall.yaml, of a region, or of a provision."
                            + " The rulesets are read in full all the same.")
    Optional<String> only = Optional.empty();

    CheckRulesetsCommand(Provider<RulesetChecker> checker) {
        this.checker = checker;
    }

    @Override
    public Integer call() {
        ProgressBar progress = new ProgressBar(spec.commandLine().getErr(), System.console() != null);
        RulesetChecker.Checked checked = checker.get()
                .check(
                        new RulesetChecker.Asked(directory, parent.rulesets, only),
                        (cases, all) -> progress.show(OptionalDouble.of((double) cases / all)));
        progress.end();
        checked.faults().forEach(f -> spec.commandLine().getErr().println(PlainText.of(f)));
        if (!checked.faults().isEmpty()) {
            return ExitCode.RULESETS_FAULTY;
        }
        spec.commandLine().getOut().println(sentence(checked));
        return 0;
    }

    private static String sentence(RulesetChecker.Checked checked) {
        return String.format(
                Locale.ROOT,
                "%s; %,d %s passed.",
                checked.editions() == 1 ? "The edition is valid" : "All " + checked.editions() + " editions are valid",
                checked.cases(),
                checked.cases() == 1 ? "case" : "cases");
    }
}
