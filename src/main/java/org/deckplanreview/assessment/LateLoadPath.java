package org.deckplanreview.assessment;

import java.util.function.Supplier;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.BoardField;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.loadpath.ActionForces;
import org.deckplanreview.loadpath.LiftForces;
import org.deckplanreview.loadpath.LoadPath;
import org.deckplanreview.loadpath.MemberAnalysis;

/** A load path that is derived when something first asks it: many provisions ask for geometry alone. For one thread. */
final class LateLoadPath implements LoadPath {
    private final Supplier<LoadPath> deriving;
    private LoadPath derived;

    LateLoadPath(Supplier<LoadPath> deriving) {
        this.deriving = deriving;
    }

    private LoadPath path() {
        if (derived == null) {
            derived = deriving.get();
        }
        return derived;
    }

    @Override
    public Derived<MemberAnalysis> member(Member member) {
        return path().member(member);
    }

    @Override
    public Derived<Sheet> areaLoads(int platformIndex) {
        return path().areaLoads(platformIndex);
    }

    @Override
    public Derived<BoardLoads> boards(BoardField boards) {
        return path().boards(boards);
    }

    @Override
    public Derived<ActionForces> post(PostPlace post) {
        return path().post(post);
    }

    @Override
    public Derived<LiftForces> lift(PostPlace post) {
        return path().lift(post);
    }

    @Override
    public Derived<LiftForces> lift(FootingPlace footing) {
        return path().lift(footing);
    }

    @Override
    public Derived<Double> postWeightN(PostPlace post) {
        return path().postWeightN(post);
    }

    @Override
    public Derived<ActionForces> footing(FootingPlace footing) {
        return path().footing(footing);
    }

    @Override
    public Derived<Double> footingWeightN(FootingPlace footing) {
        return path().footingWeightN(footing);
    }

    @Override
    public Derived<DeckLoads> deckLoads(int platformIndex) {
        return path().deckLoads(platformIndex);
    }

    @Override
    public Derived<Double> imposedKNPerM2(int platformIndex) {
        return path().imposedKNPerM2(platformIndex);
    }
}
