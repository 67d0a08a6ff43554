package org.deckplanreview.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The option that adds a directory of rulesets, read ahead of all commands: the rulesets are loaded before a command runs.
 *
 * @param others the arguments without it
 */
record RulesetsOption(Optional<String> directory, List<String> others) {
    private static final String WITH_VALUE = DeckPlanReviewCommand.RULESETS + "=";

    static RulesetsOption of(List<String> args) {
        Optional<String> directory = Optional.empty();
        List<String> others = new ArrayList<>();
        for (int i = 0; i < args.size(); i++) {
            String arg = args.get(i);
            if (arg.startsWith(WITH_VALUE)) {
                directory = Optional.of(arg.substring(WITH_VALUE.length()));
            } else if (arg.equals(DeckPlanReviewCommand.RULESETS) && i + 1 < args.size()) {
                directory = Optional.of(args.get(++i));
            } else {
                others.add(arg);
            }
        }
        return new RulesetsOption(directory, List.copyOf(others));
    }
}
