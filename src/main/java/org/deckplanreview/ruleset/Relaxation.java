package org.deckplanreview.ruleset;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.deckplanreview.vocabulary.Vocabulary;

/**
 * What an amendment permits that the edition refuses. An amendment may ask for more of its own accord; to ask for less of a
 * requirement it must cite an authority that can.
 */
final class Relaxation {

    private static final List<Standing> MAY_RELAX = List.of(Standing.STATUTE, Standing.STATUTORY_GUIDANCE);
    private static final String AUTHORITY =
            "a citation of a source of the standing statute or statutory guidance that says so, or what is no less strict";

    private final Entry root;
    private final Edition was;
    private final Edition is;
    private final Vocabulary vocabulary;

    private Relaxation(Entry root, Edition was, Edition is, Vocabulary vocabulary) {
        this.root = root;
        this.was = was;
        this.is = is;
        this.vocabulary = vocabulary;
    }

    /**
     * Tells what is relaxed without authority.
     *
     * @param root of the amendment's file
     */
    static void tell(Entry root, Edition was, Edition is, Vocabulary vocabulary) {
        new Relaxation(root, was, is, vocabulary).tell();
    }

    private void tell() {
        Map<String, Provision> after = AmendedValues.byId(is);
        for (Provision before : was.provisions()) {
            if (before.obligation() == Obligation.SHALL) {
                Optional.ofNullable(after.get(before.id()))
                        .ifPresentOrElse(now -> provision(before, now), () -> withdrawn(before));
            }
        }
        loads();
    }

    private void withdrawn(Provision provision) {
        for (Entry item : root.itemsOf("withdraws")) {
            if (Overlay.withdrawnId(item).text().equals(provision.id())
                    && item.optional("cite").filter(this::citesAuthority).isEmpty()) {
                fault(Overlay.withdrawnId(item), provision.id() + " is withdrawn", Strictness.LOOSER);
            }
        }
    }

    private void provision(Provision before, Provision now) {
        Optional<Entry> override = root.itemsOf("provisions").stream()
                .filter(entry -> entry.member("id").text().equals(before.id()))
                .findFirst();
        if (override.flatMap(entry -> entry.optional("cite")).isPresent() && mayRelax(now.citation())) {
            return;
        }
        for (ChangedValue value : LimitChange.between(before, now, vocabulary).values()) {
            // A value's own citation counts; the provision's counts only where the amendment states it.
            boolean isCited = cited(value)
                    .filter(citation -> !citation.equals(now.citation()))
                    .isPresent();
            if (value.strictness().mayRelax() && !isCited) {
                fault(
                        place(override, value),
                        before.id() + ", " + value.what() + ": " + text(value.was()) + " becomes " + text(value.is()),
                        value.strictness());
            }
        }
    }

    private static String text(Optional<ChangedValue.Side> side) {
        return side.map(s -> "'" + s.text() + "'").orElse("nothing");
    }

    private Entry place(Optional<Entry> stated, ChangedValue value) {
        return value.standard()
                .flatMap(standard -> root.optional("sets").flatMap(sets -> sets.optional(standard)))
                .or(() -> stated)
                .orElse(root);
    }

    private void loads() {
        Optional<Entry> imposed = root.optional("loads");
        for (ChangedValue value :
                LimitChange.between(was.loads(), is.loads(), vocabulary).values()) {
            if (value.strictness().mayRelax() && cited(value).isEmpty()) {
                fault(
                        place(imposed, value),
                        value.what() + ": " + text(value.was()) + " becomes " + text(value.is()),
                        value.strictness());
            }
        }
    }

    /** The authority that a value comes from now and did not come from before. */
    private static Optional<Citation> cited(ChangedValue value) {
        Optional<Citation> before = value.was().map(ChangedValue.Side::citation);
        return value.is()
                .map(ChangedValue.Side::citation)
                .filter(citation -> !before.equals(Optional.of(citation)))
                .filter(Relaxation::mayRelax);
    }

    private static boolean mayRelax(Citation citation) {
        return MAY_RELAX.contains(citation.source().standing());
    }

    private boolean citesAuthority(Entry cite) {
        String key = cite.member("source").text();
        String own = root.member("amendment").text() + "/" + key;
        return is.sources().stream()
                .filter(source -> source.key().equals(own) || source.key().equals(key))
                .allMatch(source -> MAY_RELAX.contains(source.standing()));
    }

    private void fault(Entry at, String what, Strictness strictness) {
        at.fault(
                "Over the edition " + was.name() + ", this "
                        + (strictness == Strictness.UNKNOWN ? "may permit" : "permits")
                        + " what it refuses, without an authority: " + what,
                AUTHORITY);
    }
}
