package org.deckplanreview.loadpath;

import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.BoardField;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.PostPlace;

/** Loads from the boards down to the soil. Where the submission leaves out what a result needs, the result is missing. */
public interface LoadPath {

    static LoadPath derive(Layout layout, LoadModel model) {
        return Takedown.derive(layout, model);
    }

    /** Missing too where the member has fewer supports than it needs to stand: the need says which. */
    Derived<MemberAnalysis> member(Member member);

    /** Load on one board over its own width and one gap. The concentrated load stands on it whole. */
    Derived<BoardLoads> boards(BoardField boards);

    /**
     * Force at the post's upper end from the beams that rest on it; its own weight not included. The concentrated load
     * stands once, where it is worst.
     */
    Derived<ActionForces> post(PostPlace post);

    /** What presses the post's upper end down, and what may lift the beams off it; its own weight not included. */
    Derived<LiftForces> lift(PostPlace post);

    /** The post's self-weight, N. */
    Derived<Double> postWeightN(PostPlace post);

    /** Force on the soil from posts and their weight; the footing's own weight not included. */
    Derived<ActionForces> footing(FootingPlace footing);

    /** What presses the footing down, its posts' weight included and its own not, and what may lift it. */
    Derived<LiftForces> lift(FootingPlace footing);

    /** The footing's own weight, N. */
    Derived<Double> footingWeightN(FootingPlace footing);

    /** The uniform imposed load on a platform, kN/m2: the ruleset's, or a larger one that the designer states. */
    Derived<Double> imposedKNPerM2(int platformIndex);

    /** What lies on the joists of a platform, g_k, q_k and s_k in kN/m2, with how it comes about. */
    Derived<Sheet> areaLoads(int platformIndex);

    /** What lies on each square metre of a platform, its joists included and its beams not. */
    Derived<DeckLoads> deckLoads(int platformIndex);

    /**
     * Loads on a platform's area, kN/m2.
     *
     * @param permanent as it goes down to the ground: of finishes, boards and joists, or the least that the ruleset takes
     * @param ownPermanent of finishes, boards and joists as they are
     */
    record DeckLoads(double permanent, double ownPermanent, double imposed, double snow) {}

    /** Loads on one board, N for each mm of its length, and N. */
    record BoardLoads(double permanentNPerMm, double imposedNPerMm, double snowNPerMm, double concentratedN) {}
}
