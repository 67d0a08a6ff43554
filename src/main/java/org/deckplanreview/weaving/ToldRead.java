package org.deckplanreview.weaving;

import net.bytebuddy.asm.Advice;
import org.deckplanreview.submission.ReadLog;

/** What stands at the beginning of each woven accessor. */
final class ToldRead {

    private ToldRead() {}

    @Advice.OnMethodEnter
    static void enter(@Advice.This Object owner, @Advice.Origin("#m") String component) {
        ReadLog.read(owner, component);
    }
}
