package org.deckplanreview.loadpath;

import org.deckplanreview.layout.BoardField;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.submission.Derived;

/** Loads from the boards down to the soil. Where the submission leaves out what a result needs, the result is missing. */
public interface LoadPath {

    static LoadPath derive(Layout layout, LoadModel model) {
        return Takedown.derive(layout, model);
    }

    /** Missing too where the member has fewer supports than it needs to stand: the need says which. */
    Derived<MemberAnalysis> member(Member member);

    /** Load on one board of its own width: permanent and uniform imposed in N/mm, concentrated in N. */
    Derived<BoardLoads> boards(BoardField boards);

    /** Force at the post's upper end; its own weight not included. */
    Derived<ActionForces> post(PostPlace post);

    /** The post's self-weight, N. */
    Derived<Double> postWeightN(PostPlace post);

    /** Force on the soil from posts and their weight; the footing's own weight not included. */
    Derived<ActionForces> footing(FootingPlace footing);

    /** The footing's own weight, N. */
    Derived<Double> footingWeightN(FootingPlace footing);

    /** Loads on one board. */
    record BoardLoads(double permanentNPerMm, double imposedNPerMm, double snowNPerMm, double concentratedN) {}
}
