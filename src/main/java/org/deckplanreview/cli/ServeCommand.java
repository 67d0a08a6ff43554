package org.deckplanreview.cli;

import io.quarkus.runtime.Quarkus;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

@Command(
        name = ServeCommand.NAME,
        description = "Serves HTTP until it is stopped, on port 8080 or the one that QUARKUS_HTTP_PORT names.")
class ServeCommand implements Callable<Integer> {
    static final String NAME = "serve";

    static int serve() {
        Quarkus.waitForExit();
        return 0;
    }

    @Override
    public Integer call() {
        return serve();
    }
}
