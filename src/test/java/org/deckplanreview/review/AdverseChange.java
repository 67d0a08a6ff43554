package org.deckplanreview.review;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.assessment.Finding;
import org.deckplanreview.ruleset.Concern;
import org.deckplanreview.submission.SubjectKind;

/** A change that makes a deck worse and nothing better, but for what {@link #spares} says. */
enum AdverseChange {

    /**
     * For the beam's bending, shear and deflection. A post that carries nothing any more looks better, a support that is
     * gone cannot lift, and two posts can bear on the beam with less than one between them did. Far along a beam of many
     * spans forces fall by a hair where they rise by much nearby.
     */
    A_BEAM_LOSES_A_POST(f ->
            f.subject().kind() != SubjectKind.BEAMS || !f.provision().id().matches(".*(bending|shear|deflection).*")) {
        @Override
        double slack() {
            return 0.01;
        }

        @Override
        boolean isMade(ObjectNode deck, int choice) {
            List<ObjectNode> beams = all(deck, "beams");
            beams.removeIf(beam -> beam.path("posts").size() < 3);
            if (beams.isEmpty()) {
                return false;
            }
            ArrayNode posts = (ArrayNode) beams.get(choice % beams.size()).get("posts");
            posts.remove(choice % posts.size());
            return true;
        }
    },

    /**
     * For what carries it. Its own weight holds down what is under it, and nobody pushes any more at the guard that stood
     * in its place, or is carried with it; far from it forces fall by a hair, as a beam of many spans lifts there.
     */
    A_STAIR_IS_ADDED(f -> isUplift(f) || !isOfCarrying(f) || f.provision().id().equals("ledger.fixing-pull")) {
        @Override
        double slack() {
            return 0.05;
        }

        @Override
        Optional<Pair> of(JsonNode deck, int choice) {
            ObjectNode without = deck.deepCopy();
            List<ObjectNode> platforms = new ArrayList<>();
            without.path("platforms").forEach(p -> platforms.add((ObjectNode) p));
            platforms.removeIf(p -> p.path("stairs").isEmpty());
            if (platforms.isEmpty()) {
                return Optional.empty();
            }
            ObjectNode platform = platforms.get(choice % platforms.size());
            ArrayNode stairs = (ArrayNode) platform.get("stairs");
            JsonNode gone = stairs.remove(choice % stairs.size());
            if (platform.has("guards")) {
                platform.path("edges").forEach(edge -> {
                    if (edge.get("line").equals(gone.get("line"))) {
                        ((ObjectNode) edge).set("guard", platform.at("/guards/0/id"));
                    }
                });
            }
            return Optional.of(new Pair(without, deck));
        }

        @Override
        boolean isMade(ObjectNode deck, int choice) {
            throw new UnsupportedOperationException("A stair is taken away instead");
        }
    },

    POSTS_STAND_LOOSE(f -> false) {
        @Override
        boolean isMade(ObjectNode deck, int choice) {
            List<ObjectNode> posts = all(deck, "posts");
            posts.removeIf(post -> !post.path("base").asText().matches("connector|embedded"));
            posts.forEach(post -> post.put("base", "none"));
            return !posts.isEmpty();
        }
    },

    /** A resistance that is beyond what there is gets nearer to what there is. */
    HOLD_DOWNS_ARE_WEAKER(f -> f.provision().id().startsWith("drawing.")) {
        @Override
        boolean isMade(ObjectNode deck, int choice) {
            List<ObjectNode> held = all(deck, "posts");
            held.addAll(all(deck, "beams"));
            deck.path("platforms").forEach(p -> held.add((ObjectNode) p.get("joists")));
            held.removeIf(member -> !member.has("holdDownResistance"));
            held.forEach(member -> member.put("holdDownResistance", "0.05 kN"));
            return !held.isEmpty();
        }
    },

    /**
     * The concrete's top goes down by as much as its thickness, so that there is less of it on the soil. A post that had
     * no room gets some, and can then be judged; and a longer post weighs more, which holds down where the deck is pushed.
     */
    POSTS_REACH_DEEPER(f -> f.provision().concern() == Concern.FOOTING
            || isUplift(f)
            || f.provision().id().equals("post.room")
            || f.provision().id().equals("stability.overturning")
            || f.provision().concern() == Concern.POST && f.determination() == Determination.UNDETERMINED) {
        @Override
        boolean isMade(ObjectNode deck, int choice) {
            List<ObjectNode> footings = all(deck, "footings");
            footings.removeIf(f -> !f.has("topAboveGround") || !f.has("thickness"));
            footings.forEach(f -> {
                add(f, "topAboveGround", "-60", deck);
                add(f, "thickness", "-60", deck);
            });
            return !footings.isEmpty();
        }
    },

    NOTCHES_ARE_DEEPER(f -> false) {
        @Override
        boolean isMade(ObjectNode deck, int choice) {
            List<ObjectNode> members = all(deck, "beams");
            deck.path("platforms").forEach(p -> members.add((ObjectNode) p.get("joists")));
            members.forEach(member -> {
                if (member.has("endNotch")) {
                    add((ObjectNode) member.get("endNotch"), "depth", "10", deck);
                } else {
                    ObjectNode notch =
                            member.putObject("endNotch").put("slope", 0).put("side", "support");
                    notch.put("depth", 0).put("supportDistance", 0);
                    add(notch, "depth", "10", deck);
                    add(notch, "supportDistance", "50", deck);
                }
            });
            return true;
        }
    },

    /** A guard that is too low gets better at that. */
    GUARDS_ARE_TALLER(f -> f.provision().id().contains("height")) {
        @Override
        boolean isMade(ObjectNode deck, int choice) {
            List<ObjectNode> guards = all(deck, "guards");
            guards.forEach(guard -> add(guard, "height", "100", deck));
            return !guards.isEmpty();
        }
    },

    WIND_IS_STRONGER(f -> false) {
        @Override
        boolean isMade(ObjectNode deck, int choice) {
            String wind = deck.at("/site/windPressure").asText();
            if (!wind.endsWith("kN/m2")) {
                return false;
            }
            BigDecimal more = new BigDecimal(wind.split(" ")[0]).add(new BigDecimal("0.2"));
            ((ObjectNode) deck.get("site")).put("windPressure", more.toPlainString() + " kN/m2");
            return true;
        }
    },

    SNOW_IS_HEAVIER(AdverseChange::isUplift) {
        @Override
        boolean isMade(ObjectNode deck, int choice) {
            String snow = deck.at("/site/snowLoad").asText();
            if (!snow.endsWith("kN/m2")) {
                return false;
            }
            BigDecimal more = new BigDecimal(snow.split(" ")[0]).add(new BigDecimal("0.5"));
            ((ObjectNode) deck.get("site")).put("snowLoad", more.toPlainString() + " kN/m2");
            return true;
        }
    };

    private static final List<Concern> CARRYING =
            List.of(Concern.SPAN, Concern.POST, Concern.FOOTING, Concern.CONNECTION);
    private static final BigDecimal MM_IN_AN_INCH = new BigDecimal("25.4");

    private final Predicate<Finding> spares;

    AdverseChange(Predicate<Finding> spares) {
        this.spares = spares;
    }

    /** The same deck without the change and with it. */
    record Pair(JsonNode better, JsonNode worse) {}

    /** Empty where there is nothing to change. */
    Optional<Pair> of(JsonNode deck, int choice) {
        ObjectNode changed = deck.deepCopy();
        return isMade(changed, choice) ? Optional.of(new Pair(deck, changed)) : Optional.empty();
    }

    /** By how much of itself a utilisation may fall all the same. */
    double slack() {
        return 1e-9;
    }

    /** Whether this change can make such a finding better. */
    boolean spares(Finding finding) {
        return spares.test(finding);
    }

    /** Changes the deck if it has what is changed. */
    abstract boolean isMade(ObjectNode deck, int choice);

    private static boolean isOfCarrying(Finding finding) {
        return CARRYING.contains(finding.provision().concern());
    }

    private static boolean isUplift(Finding finding) {
        return finding.quantity().equals("smallest reaction")
                || finding.provision().id().contains("uplift");
    }

    private static List<ObjectNode> all(JsonNode deck, String members) {
        List<ObjectNode> all = new ArrayList<>();
        deck.path("platforms").forEach(p -> p.path(members).forEach(m -> all.add((ObjectNode) m)));
        return all;
    }

    private static void add(ObjectNode node, String member, String mm, JsonNode deck) {
        BigDecimal more = new BigDecimal(mm);
        if (deck.path("units").asText().equals("in")) {
            more = more.divide(MM_IN_AN_INCH, 3, RoundingMode.HALF_UP);
        }
        node.put(member, node.get(member).decimalValue().add(more));
    }
}
