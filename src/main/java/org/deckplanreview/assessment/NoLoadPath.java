package org.deckplanreview.assessment;

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

/** Stands where loads are not known yet: a ruleset whose loads depend on loads is at fault. */
enum NoLoadPath implements LoadPath {
    INSTANCE;

    private static IllegalStateException fault() {
        return new IllegalStateException("The loads of a ruleset cannot depend on quantities that follow from loads");
    }

    @Override
    public Derived<MemberAnalysis> member(Member member) {
        throw fault();
    }

    @Override
    public Derived<Sheet> areaLoads(int platformIndex) {
        throw fault();
    }

    @Override
    public Derived<BoardLoads> boards(BoardField boards) {
        throw fault();
    }

    @Override
    public Derived<ActionForces> post(PostPlace post) {
        throw fault();
    }

    @Override
    public Derived<LiftForces> lift(PostPlace post) {
        throw fault();
    }

    @Override
    public Derived<LiftForces> lift(FootingPlace footing) {
        throw fault();
    }

    @Override
    public Derived<Double> postWeightN(PostPlace post) {
        throw fault();
    }

    @Override
    public Derived<ActionForces> footing(FootingPlace footing) {
        throw fault();
    }

    @Override
    public Derived<Double> footingWeightN(FootingPlace footing) {
        throw fault();
    }

    @Override
    public Derived<DeckLoads> deckLoads(int platformIndex) {
        throw fault();
    }

    @Override
    public Derived<Double> imposedKNPerM2(int platformIndex) {
        throw fault();
    }
}
