package org.deckplanreview.cli;

import org.deckplanreview.assessment.Determination;

/** What a command's exit tells. */
final class ExitCode {
    static final int COMPLIES = 0;
    static final int DOES_NOT_COMPLY = 1;
    static final int UNDETERMINED = 2;
    static final int NOT_A_SUBMISSION = 3;
    static final int RULESETS_FAULTY = 1;
    static final int GOT_WORSE = 1;
    static final int USAGE = 64;
    static final int SOFTWARE = 70;

    static final String USAGE_MEANS = "64:the command line is wrong";
    static final String SOFTWARE_MEANS = "70:the command itself failed, for example by its configuration";

    private ExitCode() {}

    static int of(Determination outcome) {
        return switch (outcome) {
            case COMPLIES, NOT_APPLICABLE -> COMPLIES;
            case DOES_NOT_COMPLY -> DOES_NOT_COMPLY;
            case UNDETERMINED -> UNDETERMINED;
        };
    }
}
