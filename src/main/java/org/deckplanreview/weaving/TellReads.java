package org.deckplanreview.weaving;

import static net.bytebuddy.matcher.ElementMatchers.isPublic;
import static net.bytebuddy.matcher.ElementMatchers.namedOneOf;
import static net.bytebuddy.matcher.ElementMatchers.takesNoArguments;

import net.bytebuddy.asm.Advice;
import net.bytebuddy.build.Plugin;
import net.bytebuddy.description.annotation.AnnotationDescription;
import net.bytebuddy.description.type.RecordComponentDescription;
import net.bytebuddy.description.type.TypeDescription;
import net.bytebuddy.dynamic.ClassFileLocator;
import net.bytebuddy.dynamic.DynamicType;
import org.deckplanreview.submission.Woven;

/** Lets every accessor of every record of the submission tell that it is called. The build runs it over compiled classes. */
public final class TellReads implements Plugin {

    private static final String RECORDS_OF = "org.deckplanreview.submission";

    @Override
    public boolean matches(TypeDescription type) {
        return type.isRecord()
                && type.isPublic()
                && !type.isNestedClass()
                && type.getPackage().getName().equals(RECORDS_OF)
                && !type.getDeclaredAnnotations().isAnnotationPresent(Woven.class);
    }

    @Override
    public DynamicType.Builder<?> apply(
            DynamicType.Builder<?> builder, TypeDescription type, ClassFileLocator locator) {
        String[] components = type.getRecordComponents().stream()
                .map(RecordComponentDescription::getActualName)
                .toArray(String[]::new);
        return builder.annotateType(
                        AnnotationDescription.Builder.ofType(Woven.class).build())
                .visit(Advice.to(ToldRead.class)
                        .on(namedOneOf(components).and(takesNoArguments()).and(isPublic())));
    }

    @Override
    public void close() {
        // Nothing is held open.
    }
}
