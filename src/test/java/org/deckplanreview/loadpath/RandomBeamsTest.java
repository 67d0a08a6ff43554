package org.deckplanreview.loadpath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import org.deckplanreview.loadpath.BeamLoad.Distributed;
import org.deckplanreview.loadpath.BeamLoad.Point;

/** Beams of 1 to 8 spans with or without cantilevers, with or without shear deformation, under random loads. */
class RandomBeamsTest {

    /** Places lie on a grid, since elements of a fraction of a millimetre would cost the full matrix its digits. */
    private static final double GRID = 50;

    record Case(double length, double[] supports, double ei, double flexibility, List<BeamLoad> loads) {
        BeamResponse response() {
            return new ContinuousBeam(length, supports, ei, flexibility).under(loads);
        }

        double total() {
            return loads.stream().mapToDouble(BeamLoad::totalN).sum();
        }

        Case mirrored() {
            double[] turned = new double[supports.length];
            for (int i = 0; i < supports.length; i++) {
                turned[i] = length - supports[supports.length - 1 - i];
            }
            return new Case(
                    length,
                    turned,
                    ei,
                    flexibility,
                    loads.stream().map(this::mirrored).toList());
        }

        private BeamLoad mirrored(BeamLoad load) {
            if (load instanceof Distributed d) {
                return new Distributed(length - d.toMm(), length - d.fromMm(), d.toNPerMm(), d.fromNPerMm());
            }
            Point p = (Point) load;
            return new Point(length - p.atMm(), p.forceN());
        }

        @Override
        public String toString() {
            return length + " on " + Arrays.toString(supports) + " EI " + ei + " shear " + flexibility + " " + loads;
        }
    }

    @Provide
    Arbitrary<Case> cases() {
        Arbitrary<List<Integer>> spans =
                Arbitraries.integers().between(6, 120).list().ofMinSize(1).ofMaxSize(8);
        Arbitrary<Integer> overhang = Arbitraries.integers().between(0, 40);
        Arbitrary<Double> bending = Arbitraries.doubles().between(1e10, 1e13);
        Arbitrary<Double> shear = Arbitraries.frequencyOf(
                Tuple.of(1, Arbitraries.just(0.0)),
                Tuple.of(2, Arbitraries.doubles().between(1e-8, 1e-6).ofScale(10)));
        Arbitrary<List<double[]>> loads = Arbitraries.integers()
                .between(0, 1000)
                .array(Integer[].class)
                .ofSize(5)
                .map(a -> Arrays.stream(a).mapToDouble(i -> i / 1000.0).toArray())
                .list()
                .ofMinSize(1)
                .ofMaxSize(6);
        return Combinators.combine(spans, overhang, overhang, bending, shear, loads)
                .as(RandomBeamsTest::caseOf);
    }

    private static Case caseOf(
            List<Integer> spans, int before, int behind, double ei, double flexibility, List<double[]> shares) {
        double[] supports = new double[spans.size() + 1];
        supports[0] = before * GRID;
        for (int i = 0; i < spans.size(); i++) {
            supports[i + 1] = supports[i] + spans.get(i) * GRID;
        }
        double length = supports[spans.size()] + behind * GRID;
        List<BeamLoad> loads = new ArrayList<>();
        for (double[] s : shares) {
            double a = Math.rint(Math.min(s[0], s[1]) * length / GRID) * GRID;
            double b = Math.rint(Math.max(s[0], s[1]) * length / GRID) * GRID;
            if (s[4] < 0.4 || b - a < 1) {
                loads.add(new Point(a, 100 + 5000 * s[2]));
            } else {
                loads.add(new Distributed(a, b, 0.1 + 5 * s[2], 0.1 + 5 * s[3]));
            }
        }
        return new Case(length, supports, ei, flexibility, loads);
    }

    @Property(tries = 300)
    void agree_with_the_full_stiffness_matrix_of_a_general_library(@ForAll("cases") Case c) {
        BeamResponse r = c.response();
        StiffnessMatrixBeam other = new StiffnessMatrixBeam(c.length, c.supports, c.ei, c.flexibility, c.loads);
        for (int i = 0; i < c.supports.length; i++) {
            assertThat(r.reactionN(i)).isCloseTo(other.reaction[i], within(1e-6 * c.total()));
        }
        double largestMoment = largest(other.moment);
        double largestDeflection = largest(other.deflection);
        for (int i = 0; i < other.nodes.length; i++) {
            double x = other.nodes[i];
            assertThat(r.momentNMm(x)).isCloseTo(other.moment[i], within(1e-6 * largestMoment + 1e-6));
            assertThat(r.deflectionMm(x)).isCloseTo(other.deflection[i], within(1e-6 * largestDeflection + 1e-12));
        }
    }

    private static double largest(double[] values) {
        return Arrays.stream(values).map(Math::abs).max().orElseThrow();
    }

    @Property(tries = 500)
    void are_in_equilibrium(@ForAll("cases") Case c) {
        BeamResponse r = c.response();
        double up = 0;
        double upMoment = 0;
        for (int i = 0; i < c.supports.length; i++) {
            up += r.reactionN(i);
            upMoment += r.reactionN(i) * c.supports[i];
        }
        double downMoment =
                c.loads.stream().mapToDouble(RandomBeamsTest::momentAboutStart).sum();
        assertThat(up).isCloseTo(c.total(), within(1e-9 * c.total()));
        assertThat(upMoment).isCloseTo(downMoment, within(1e-9 * c.total() * c.length));
    }

    private static double momentAboutStart(BeamLoad load) {
        if (load instanceof Distributed d) {
            double h = d.toMm() - d.fromMm();
            double a = d.fromNPerMm() * h / 2;
            double b = d.toNPerMm() * h / 2;
            return a * (d.fromMm() + h / 3) + b * (d.fromMm() + h * 2 / 3);
        }
        return load.totalN() * load.fromMm();
    }

    @Property(tries = 300)
    void do_the_same_when_mirrored(@ForAll("cases") Case c) {
        BeamResponse r = c.response();
        BeamResponse m = c.mirrored().response();
        double forces = 1e-9 * c.total();
        int n = c.supports.length;
        for (int i = 0; i < n; i++) {
            assertThat(m.reactionN(n - 1 - i)).isCloseTo(r.reactionN(i), within(forces));
            assertThat(m.shearBeforeN(n - 1 - i)).isCloseTo(-r.shearBehindN(i), within(forces));
        }
        for (int i = 0; i <= 20; i++) {
            double x = c.length * i / 20;
            assertThat(m.momentNMm(c.length - x)).isCloseTo(r.momentNMm(x), within(forces * c.length));
        }
    }

    @Property(tries = 200)
    void have_no_jumps_in_deflection_and_none_over_supports(@ForAll("cases") Case c) {
        BeamResponse r = c.response();
        double scale = 1e-9 * c.total() * c.length * c.length * (c.length / c.ei + c.flexibility / c.length);
        for (double s : c.supports) {
            assertThat(r.deflectionMm(s)).isCloseTo(0, within(scale));
            if (s > 0) {
                assertThat(r.deflectionMm(Math.nextDown(s))).isCloseTo(0, within(scale));
            }
        }
    }
}
