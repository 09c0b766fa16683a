package eavesproof.report;

import freemarker.core.TemplateClassResolver;
import freemarker.core.XHTMLOutputFormat;
import freemarker.template.Configuration;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TimeZone;

/**
 * The templates of one folder. A template arranges finished values into XHTML; it can read nothing
 * but the values and the other templates of its folder, and it is stopped when it does not end.
 */
public final class Templates {
    static {
        // Before FreeMarker's first class is touched: its log would be lost or in the way.
        System.setProperty("org.freemarker.loggerLibrary", "none");
    }

    private final Configuration freemarker = new StoppableTemplates();
    private final Allowance allowance;

    /**
     * @param packages whose records a template may read
     */
    public Templates(Path folder, Set<String> packages, Allowance allowance) throws LayoutTrouble {
        this.allowance = allowance;
        try {
            freemarker.setTemplateLoader(new FolderLoader(folder));
        } catch (IOException e) {
            throw new LayoutTrouble(folder.toString(), 0, 0, "expected a folder of templates", e);
        }
        freemarker.setObjectWrapper(
                new ReportValues(freemarker.getIncompatibleImprovements(), packages));
        freemarker.setDefaultEncoding("UTF-8");
        freemarker.setLocalizedLookup(false);
        freemarker.setTemplateUpdateDelayMilliseconds(Long.MAX_VALUE);
        freemarker.setLocale(Locale.ROOT);
        freemarker.setTimeZone(TimeZone.getTimeZone("UTC"));
        freemarker.setNumberFormat("computer");
        freemarker.setOutputFormat(XHTMLOutputFormat.INSTANCE);
        // Else the file's ending would choose another way of escaping.
        freemarker.setRecognizeStandardFileExtensions(false);
        freemarker.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
        freemarker.setAPIBuiltinEnabled(false);
        freemarker.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        freemarker.setLogTemplateExceptions(false);
        freemarker.setWrapUncheckedExceptions(true);
        freemarker.setFallbackOnNullLoopVariable(false);
    }

    /** The template of that name with the values filled in. */
    public String fill(String name, Map<String, ?> values) throws LayoutTrouble {
        return new Filling(freemarker, name, values, allowance).text();
    }
}
