package org.deckplanreview.layout;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.submission.Fixing;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Submission;

/** The geometry of one submission. */
public record Layout(Submission submission, Deck deck, List<PlatformLayout> platforms, List<FixingPlace> fixings) {
    public Layout {
        platforms = List.copyOf(platforms);
        fixings = List.copyOf(fixings);
    }

    /** Derives all that follows from the drawing. Outlines are simple polygons and ids are resolved, as a submission that was read has them. */
    public static Layout derive(Submission submission) {
        GroundSurface ground = GroundSurface.of(submission.site());
        Neighbours neighbours = Neighbours.of(submission);
        List<PlatformLayout> platforms = new ArrayList<>();
        for (int i = 0; i < submission.platforms().size(); i++) {
            platforms.add(new PlatformDerivation(submission, i, ground, neighbours).derive());
        }
        List<FixingPlace> fixings = new ArrayList<>();
        List<Fixing> given = submission.protection().fixings();
        for (int i = 0; i < given.size(); i++) {
            Pointer pointer = Pointer.of("/protection/fixings").child(i);
            fixings.add(new FixingPlace(pointer, given.get(i).displayLabel(), given.get(i)));
        }
        return new Layout(submission, new Deck(), platforms, fixings);
    }

    /** All subjects of a kind, in the order of the submission. */
    public List<Subject> subjects(SubjectKind kind) {
        List<Subject> all = new ArrayList<>();
        switch (kind) {
            case DECK -> all.add(deck);
            case PLATFORMS -> all.addAll(platforms);
            case BOARDS -> platforms.forEach(p -> p.boards().ifPresent(all::add));
            case JOISTS -> platforms.forEach(p -> all.addAll(p.joists()));
            case BEAMS -> platforms.forEach(p -> all.addAll(p.beams()));
            case LEDGERS -> platforms.forEach(p -> p.ledger().ifPresent(all::add));
            case POSTS -> platforms.forEach(p -> all.addAll(p.posts()));
            case FOOTINGS -> platforms.forEach(p -> all.addAll(p.footings()));
            case EDGES -> platforms.forEach(p -> all.addAll(p.edges()));
            case GUARDS -> platforms.forEach(p -> all.addAll(p.guards()));
            case STAIRS -> platforms.forEach(p -> all.addAll(p.stairs()));
            case BRACES -> platforms.forEach(p -> all.addAll(p.braces()));
            case FIXINGS -> all.addAll(fixings);
        }
        return List.copyOf(all);
    }

    public PlatformLayout platformOf(Subject subject) {
        return platforms.get(subject.platformIndex());
    }
}
