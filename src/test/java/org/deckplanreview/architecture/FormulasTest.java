package org.deckplanreview.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import net.bytebuddy.jar.asm.ClassReader;
import net.bytebuddy.jar.asm.ClassVisitor;
import net.bytebuddy.jar.asm.MethodVisitor;
import net.bytebuddy.jar.asm.Opcodes;
import org.junit.jupiter.api.Test;

/**
 * An equation of a standard stands in a formula, which calculates and is shown. What methods still multiply and divide by hand is
 * listed here with the reason, and nothing else may.
 */
class FormulasTest {
    private static final Path METHODS = Path.of("target/classes/org/deckplanreview/method");
    private static final Set<String> DOCUMENTS =
            Set.of("en1995", "nds2018", "equilibrium", "foundation", "guard", "stair", "decking", "durability");

    /** Geometry on which formulas start, loads that statics take, and choices of a rule or of the worst case. */
    private static final Map<String, String> BY_HAND = Map.ofEntries(
            Map.entry("en1995/BeamJoint", "geometry of the rows of fasteners"),
            Map.entry("en1995/BoardBasis", "loads of a combination added up for a board"),
            Map.entry("en1995/CarrierBearing", "geometry of contacts"),
            Map.entry("en1995/Combination", "psi0 on the factors that the statics take"),
            Map.entry("en1995/Contact", "geometry of contacts"),
            Map.entry("en1995/HorizontalLoad", "areas in the wind"),
            Map.entry("en1995/LedgerPull", "load on the deck times its area"),
            Map.entry("en1995/MemberBending", "moment beside a notch from the statics"),
            Map.entry("en1995/PostBasis", "geometry of the seat"),
            Map.entry("en1995/PostLean", "forces among posts"),
            Map.entry("en1995/PostLength", "geometry of the post"),
            Map.entry("en1995/PostSway", "parts among posts"),
            Map.entry("en1995/Twist", "places of posts"),
            Map.entry("equilibrium/Balance", "forces of a combination"),
            Map.entry("equilibrium/Overturning", "search for the worst tilting line"),
            Map.entry("foundation/BearingPressure", "volumes and places"),
            Map.entry("foundation/Eccentricity", "resultant of several posts"),
            Map.entry("foundation/PadPlan", "geometry of the pad"),
            Map.entry("foundation/SlopeAtFooting", "geometry of the ground"),
            Map.entry("nds2018/Adjustments", "which factor applies"),
            Map.entry("nds2018/BeamStability", "which rule applies"),
            Map.entry("nds2018/MemberBending", "moment beside a notch from the statics"),
            Map.entry("nds2018/MemberDeflection", "creep on the factors that the statics take"),
            Map.entry("nds2018/MemberShear", "how deep a notch may be"),
            Map.entry("nds2018/PostColumn", "which alternative governs"),
            Map.entry("nds2018/Section", "section in inches"));

    @Test
    void no_method_multiplies_or_divides_outside_a_formula() {
        Map<String, List<String>> found = new TreeMap<>();
        for (Path file : classes()) {
            List<String> methods = calculating(file);
            if (!methods.isEmpty()) {
                found.merge(
                        nameOf(file),
                        methods,
                        (a, b) -> Stream.concat(a.stream(), b.stream()).toList());
            }
        }
        assertThat(found.keySet()).as(found.toString()).isEqualTo(BY_HAND.keySet());
    }

    private static List<Path> classes() {
        try (Stream<Path> files = Files.walk(METHODS)) {
            return files.filter(f -> f.toString().endsWith(".class"))
                    .filter(f -> DOCUMENTS.contains(f.getParent().getFileName().toString()))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Of the outermost class, with its package. */
    private static String nameOf(Path file) {
        String name = METHODS.relativize(file).toString().replace(".class", "");
        return name.contains("$") ? name.substring(0, name.indexOf('$')) : name;
    }

    private static List<String> calculating(Path file) {
        List<String> found = new ArrayList<>();
        try {
            new ClassReader(Files.readAllBytes(file))
                    .accept(
                            new ClassVisitor(Opcodes.ASM9) {
                                @Override
                                public MethodVisitor visitMethod(
                                        int access, String name, String type, String signature, String[] thrown) {
                                    return new MethodVisitor(Opcodes.ASM9) {
                                        @Override
                                        public void visitInsn(int opcode) {
                                            if ((opcode == Opcodes.DMUL || opcode == Opcodes.DDIV)
                                                    && !found.contains(name)) {
                                                found.add(name);
                                            }
                                        }
                                    };
                                }
                            },
                            ClassReader.SKIP_DEBUG);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return found;
    }
}
