package org.deckplanreview.api;

import jakarta.ws.rs.core.Application;
import org.eclipse.microprofile.openapi.annotations.OpenAPIDefinition;
import org.eclipse.microprofile.openapi.annotations.info.Info;
import org.eclipse.microprofile.openapi.annotations.info.License;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** What the OpenAPI document says of the whole service. */
@OpenAPIDefinition(
        info =
                @Info(
                        title = "Deck Plan Review",
                        version = "1",
                        description =
                                "Reviews the design of a raised timber deck against the code of practice of its region and"
                                        + " tells, provision by provision, what complies, what does not and what cannot be"
                                        + " told, with calculation and citation. A pre-check: it grants no approval; local"
                                        + " codes and a licensed engineer prevail.",
                        license = @License(name = "Apache-2.0", url = "https://www.apache.org/licenses/LICENSE-2.0")),
        tags = {
            @Tag(name = "reviews", description = "Submissions in, reports out."),
            @Tag(name = "comparisons", description = "Submissions under two editions."),
            @Tag(name = "rulesets", description = "What submissions are reviewed against."),
            @Tag(name = "schemas", description = "The forms of submissions, reports and rulesets."),
            @Tag(name = "problems", description = "What problems mean.")
        })
public class ServiceDescription extends Application {}
