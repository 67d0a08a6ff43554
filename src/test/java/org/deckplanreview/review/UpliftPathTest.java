package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.deckplanreview.assessment.Assessment;
import org.deckplanreview.assessment.Finding;
import org.deckplanreview.generator.DeckGenerator;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.LiftForces;
import org.deckplanreview.loadpath.MemberAnalysis;
import org.junit.jupiter.api.Test;

/** Every joint on an uplifted path, from joists down to footings, is named in a finding. */
class UpliftPathTest {

    private static final int DECKS = 30;

    /** EN 1990, Table A1.2(A): 1.1 and 1.5 on what lifts, 0.9 on what holds down. */
    private static boolean lifts(LiftForces f) {
        double up = -(1.1 * f.permanentUpN() + 1.5 * Math.min(f.imposedN(), f.concentratedN()));
        return up > 0.9 * f.permanentDownN() * (1 + 1e-9);
    }

    @Test
    void of_every_sample() {
        List<String> unnamed = new ArrayList<>();
        int joints = 0;
        for (Path sample : BuiltIn.samples()) {
            joints += unnamed(BuiltIn.assess(BuiltIn.submission(BuiltIn.read(sample))), unnamed);
        }
        assertThat(unnamed).isEmpty();
        assertThat(joints).isGreaterThan(10);
    }

    @Test
    void of_generated_decks() {
        List<String> unnamed = new ArrayList<>();
        int joints = 0;
        DeckGenerator generator = new DeckGenerator(7);
        for (int number = 0; number < DECKS; number++) {
            joints += unnamed(BuiltIn.assess(BuiltIn.submission(generator.deck(number))), unnamed);
        }
        assertThat(unnamed).isEmpty();
        assertThat(joints).isGreaterThan(10);
    }

    private static int unnamed(Assessment assessment, List<String> unnamed) {
        int joints = 0;
        for (PlatformLayout platform : assessment.layout().platforms()) {
            for (Member member : Stream.<Member>concat(platform.joists().stream(), platform.beams().stream())
                    .toList()) {
                Derived<MemberAnalysis> analysis = assessment.loadPath().member(member);
                for (int i = 0; analysis.isKnown() && i < member.supports().size(); i++) {
                    if (lifts(analysis.get().lift(i))) {
                        joints++;
                        look(assessment, member, member.supports().get(i).label(), unnamed);
                    }
                }
            }
            for (PostPlace post : platform.posts()) {
                Derived<LiftForces> lift = assessment
                        .loadPath()
                        .lift(post)
                        .with(assessment.loadPath().postWeightN(post), LiftForces::withWeight);
                if (lift.optional().filter(UpliftPathTest::lifts).isPresent()) {
                    joints++;
                    look(assessment, post, "", unnamed);
                }
            }
            for (FootingPlace footing : platform.footings()) {
                Derived<LiftForces> lift = assessment.loadPath().lift(footing);
                if (lift.optional().filter(UpliftPathTest::lifts).isPresent()) {
                    joints++;
                    look(assessment, footing, "", unnamed);
                }
            }
        }
        return joints;
    }

    private static void look(Assessment assessment, Subject subject, String support, List<String> unnamed) {
        boolean named = assessment.findings().stream()
                .filter(f -> f.provision().id().endsWith(".uplift"))
                .filter(f -> f.subject().equals(subject) || f.also().contains(subject))
                .anyMatch(f -> text(f).contains(support));
        if (!named) {
            unnamed.add(subject.label() + " at " + support);
        }
    }

    private static String text(Finding finding) {
        return finding.sentence() + finding.needs() + finding.assumptions();
    }
}
