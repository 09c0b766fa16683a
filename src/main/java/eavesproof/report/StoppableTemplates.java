package eavesproof.report;

import freemarker.core._CoreAPI;
import freemarker.template.Configuration;
import freemarker.template.Template;
import java.io.IOException;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Has every template, included ones too, look in each turn of a loop whether it should stop. */
final class StoppableTemplates extends Configuration {
    private final Set<Template> seen = Collections.newSetFromMap(new IdentityHashMap<>());

    StoppableTemplates() {
        super(VERSION_2_3_35);
    }

    @Override
    public @Nullable Template getTemplate(
            String name,
            @Nullable Locale locale,
            @Nullable Object lookup,
            @Nullable String encoding,
            boolean parse,
            boolean ignoreMissing)
            throws IOException {
        Template template = super.getTemplate(name, locale, lookup, encoding, parse, ignoreMissing);
        synchronized (seen) {
            if (template != null && seen.add(template)) {
                // FreeMarker has no published way of stopping a template; this one is kept stable
                // for
                // programs that need it.
                _CoreAPI.addThreadInterruptedChecks(template);
            }
        }
        return template;
    }
}
