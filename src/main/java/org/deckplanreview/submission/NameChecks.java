package org.deckplanreview.submission;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import org.deckplanreview.kernel.Pointer;

/** Ids that are given twice, and references to what the document does not have. */
final class NameChecks {

    private final Submission submission;
    private final FaultList faults;
    private final List<String> timbers;
    private final List<String> walls;
    private final List<String> fixings;

    NameChecks(Submission submission, FaultList faults) {
        this.submission = submission;
        this.faults = faults;
        this.timbers = submission.timbers().stream().map(Timber::id).toList();
        this.walls = submission.site().walls().stream().map(Wall::id).toList();
        this.fixings =
                submission.protection().fixings().stream().map(Fixing::id).toList();
    }

    void check() {
        uniqueIds("timber", submission.timbers(), Timber::id, Pointer.of("/timbers"));
        uniqueIds("wall", submission.site().walls(), Wall::id, Pointer.of("/site/walls"));
        uniqueIds("heavy item", submission.use().heavyItems(), HeavyItem::id, Pointer.of("/use/heavyItems"));
        uniqueIds("fixing", submission.protection().fixings(), Fixing::id, Pointer.of("/protection/fixings"));
        uniqueIds("platform", submission.platforms(), Platform::id, Pointer.of("/platforms"));
        for (int i = 0; i < submission.platforms().size(); i++) {
            Pointer pointer = Pointer.of("/platforms").child(i);
            uniqueIds(submission.platforms().get(i), pointer);
            references(submission.platforms().get(i), pointer);
        }
    }

    private void uniqueIds(Platform platform, Pointer pointer) {
        uniqueIds("beam", platform.beams(), Beam::id, pointer.child("beams"));
        uniqueIds("post", platform.posts(), Post::id, pointer.child("posts"));
        uniqueIds("footing", platform.footings(), Footing::id, pointer.child("footings"));
        uniqueIds("guard", platform.guards(), Guard::id, pointer.child("guards"));
        uniqueIds("brace", platform.braces(), Brace::id, pointer.child("braces"));
        uniqueIds("stair", platform.stairs(), Stair::id, pointer.child("stairs"));
    }

    private <T> void uniqueIds(String kind, List<T> all, Function<T, String> id, Pointer pointer) {
        Map<String, Integer> first = new LinkedHashMap<>();
        for (int i = 0; i < all.size(); i++) {
            String name = id.apply(all.get(i));
            Integer earlier = first.putIfAbsent(name, i);
            if (earlier != null) {
                faults.add(
                        pointer.child(i).child("id"),
                        Found.quoted(name) + " is already the id of " + pointer.child(earlier),
                        "an id that no other " + kind + " has");
            }
        }
    }

    private void references(Platform platform, Pointer pointer) {
        List<String> posts = platform.posts().stream().map(Post::id).toList();
        List<String> footings = platform.footings().stream().map(Footing::id).toList();
        List<String> guards = platform.guards().stream().map(Guard::id).toList();
        platform.boards().ifPresent(b -> timber(b.timber(), pointer.child("boards")));
        platform.joists().ifPresent(j -> timber(j.timber(), pointer.child("joists")));
        platform.ledger().ifPresent(l -> {
            timber(l.timber(), pointer.child("ledger"));
            reference("wall", l.wall(), walls, pointer.child("ledger").child("wall"));
        });
        for (int i = 0; i < platform.beams().size(); i++) {
            Pointer beam = pointer.child("beams").child(i);
            timber(platform.beams().get(i).timber(), beam);
            posts(platform.beams().get(i).posts(), posts, beam.child("posts"));
            platform.beams()
                    .get(i)
                    .plyFixing()
                    .ifPresent(f -> reference(
                            "fixing",
                            f.fixing(),
                            fixings,
                            beam.child("plyFixing").child("fixing")));
        }
        for (int i = 0; i < platform.posts().size(); i++) {
            Pointer post = pointer.child("posts").child(i);
            timber(platform.posts().get(i).timber(), post);
            optional("footing", platform.posts().get(i).footing(), footings, post.child("footing"));
        }
        for (int i = 0; i < platform.edges().size(); i++) {
            Pointer guard = pointer.child("edges").child(i).child("guard");
            optional("guard", platform.edges().get(i).guard(), guards, guard);
        }
        for (int i = 0; i < platform.guards().size(); i++) {
            guard(platform.guards().get(i), pointer.child("guards").child(i));
        }
        for (int i = 0; i < platform.braces().size(); i++) {
            Pointer brace = pointer.child("braces").child(i);
            timber(platform.braces().get(i).timber(), brace);
            reference("post", platform.braces().get(i).post(), posts, brace.child("post"));
        }
        for (int i = 0; i < platform.stairs().size(); i++) {
            stair(platform.stairs().get(i), guards, pointer.child("stairs").child(i));
        }
    }

    private void guard(Guard guard, Pointer at) {
        guard.posts().ifPresent(p -> timber(p.timber(), at.child("posts")));
        optional("timber", guard.rail(), timbers, at.child("rail"));
        optional("timber", guard.infillTimber(), timbers, at.child("infillTimber"));
    }

    private void stair(Stair stair, List<String> guards, Pointer at) {
        stair.strings().ifPresent(s -> timber(s.timber(), at.child("strings")));
        optional("timber", stair.treadTimber(), timbers, at.child("treadTimber"));
        optional("guard", stair.guard(), guards, at.child("guard"));
    }

    private void posts(List<String> named, List<String> known, Pointer pointer) {
        TreeSet<String> seen = new TreeSet<>();
        for (int i = 0; i < named.size(); i++) {
            reference("post", named.get(i), known, pointer.child(i));
            if (!seen.add(named.get(i))) {
                faults.add(
                        pointer.child(i),
                        "The post " + Found.quoted(named.get(i)) + " is already listed",
                        "each post under the beam once");
            }
        }
    }

    private void timber(String id, Pointer owner) {
        reference("timber", id, timbers, owner.child("timber"));
    }

    private void optional(String kind, Optional<String> id, List<String> known, Pointer pointer) {
        id.ifPresent(name -> reference(kind, name, known, pointer));
    }

    private void reference(String kind, String id, List<String> known, Pointer pointer) {
        if (!known.contains(id)) {
            faults.unknown(kind, id, known, pointer);
        }
    }
}
