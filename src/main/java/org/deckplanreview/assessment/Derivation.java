package org.deckplanreview.assessment;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.loadpath.LoadModel;
import org.deckplanreview.loadpath.LoadPath;
import org.deckplanreview.submission.Submission;

/**
 * The layouts and load paths of one submission. Each is derived when it is first asked for; editions that give the site the same
 * values share a layout, and those that put the same loads on it a load path. For one thread.
 */
public final class Derivation {

    private record Loaded(Layout layout, LoadModel model, LoadPath path) {}

    private final Submission submission;
    private final List<Layout> layouts = new ArrayList<>();
    private final List<Loaded> loaded = new ArrayList<>();

    public Derivation(Submission submission) {
        this.submission = submission;
    }

    /** What is derived so far; what is derived from here on stays apart. */
    public Derivation copy() {
        Derivation copy = new Derivation(submission);
        copy.layouts.addAll(layouts);
        copy.loaded.addAll(loaded);
        return copy;
    }

    Submission submission() {
        return submission;
    }

    /** @param localised the submission as it is, or with local values for its site */
    Layout layout(Submission localised) {
        for (Layout known : layouts) {
            if (known.submission() == localised || known.submission().equals(localised)) {
                return known;
            }
        }
        Layout layout = Layout.derive(localised);
        layouts.add(layout);
        return layout;
    }

    /** @param layout one of this derivation */
    LoadPath loadPath(Layout layout, LoadModel model) {
        for (Loaded known : loaded) {
            if (known.layout() == layout && known.model().equals(model)) {
                return known.path();
            }
        }
        LoadPath path = LoadPath.derive(layout, model);
        loaded.add(new Loaded(layout, model, path));
        return path;
    }
}
