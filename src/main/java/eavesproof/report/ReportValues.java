package eavesproof.report;

import freemarker.core.XHTMLOutputFormat;
import freemarker.template.DefaultObjectWrapper;
import freemarker.template.SimpleScalar;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.Version;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a template can see: text, numbers, yes and no, lists, maps, and the components of records of
 * the given packages. Text is made harmless on its way in, so that none can be forgotten.
 */
final class ReportValues extends DefaultObjectWrapper {
    private final Set<String> packages;

    ReportValues(Version version, Set<String> packages) {
        super(version);
        this.packages = Set.copyOf(packages);
    }

    @Override
    public @Nullable TemplateModel wrap(@Nullable Object value) throws TemplateModelException {
        if (value instanceof String text) {
            return new SimpleScalar(PlainText.of(text));
        }
        if (value instanceof Markup markup) {
            return XHTMLOutputFormat.INSTANCE.fromMarkup(markup.xhtml());
        }
        return super.wrap(value);
    }

    /** Here FreeMarker would open the object's methods to the template. */
    @Override
    protected TemplateModel handleUnknownType(Object value) throws TemplateModelException {
        if (packages.contains(value.getClass().getPackageName()) && value instanceof Record r) {
            return new RecordModel(r, this);
        }
        throw new TemplateModelException(
                "a template cannot be given a " + value.getClass().getSimpleName());
    }
}
