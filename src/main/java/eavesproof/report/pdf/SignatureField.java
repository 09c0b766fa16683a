package eavesproof.report.pdf;

import com.openhtmltopdf.pdfboxout.PagePosition;
import com.openhtmltopdf.render.Box;
import eavesproof.report.Markup;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDObjectReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationWidget;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceDictionary;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;
import org.apache.pdfbox.pdmodel.interactive.form.PDSignatureField;

/**
 * An empty signature field over the place that the paper has for it, in the reading order and with
 * words for those who cannot see it (ISO 14289-1, 7.18).
 */
final class SignatureField {
    static final String NAME = "signature";

    private static final String WORDS = "Digital signature of the one who declares";
    private static final float INSET = 1;

    private SignatureField() {}

    static void lay(PDDocument document, Function<String, List<PagePosition<Box>>> places)
            throws IOException {
        List<PagePosition<Box>> found = places.apply(Markup.SIGNATURE_PLACE);
        if (found.isEmpty()) {
            throw new NoPlace();
        }
        PagePosition<Box> place = found.get(0);
        PDPage page = document.getPage(place.getPageNo());
        PDAcroForm form = new PDAcroForm(document);
        form.getCOSObject().removeItem(COSName.DR);
        document.getDocumentCatalog().setAcroForm(form);
        PDSignatureField field = new PDSignatureField(form);
        field.setPartialName(NAME);
        field.setAlternateFieldName(WORDS);
        PDAnnotationWidget widget = field.getWidgets().get(0);
        widget.setRectangle(
                new PDRectangle(
                        place.getX(),
                        place.getY() + INSET,
                        place.getWidth(),
                        place.getHeight() - 2 * INSET));
        widget.setPage(page);
        widget.setPrinted(true);
        widget.setAppearance(appearance(empty(document, widget.getRectangle())));
        List<PDAnnotation> annotations = new ArrayList<>(page.getAnnotations());
        annotations.add(widget);
        page.setAnnotations(annotations);
        page.getCOSObject().setName(COSName.getPDFName("Tabs"), "S");
        form.setFields(new ArrayList<>(List.of(field)));
        tag(document, page, widget);
    }

    static PDAppearanceStream empty(PDDocument document, PDRectangle rectangle) {
        PDAppearanceStream stream = new PDAppearanceStream(document);
        stream.setBBox(new PDRectangle(rectangle.getWidth(), rectangle.getHeight()));
        stream.setResources(new PDResources());
        return stream;
    }

    static PDAppearanceDictionary appearance(PDAppearanceStream stream) {
        PDAppearanceDictionary dictionary = new PDAppearanceDictionary();
        dictionary.setNormalAppearance(stream);
        return dictionary;
    }

    private static void tag(PDDocument document, PDPage page, PDAnnotationWidget widget) {
        PDStructureTreeRoot root = document.getDocumentCatalog().getStructureTreeRoot();
        if (root == null || !(root.getKids().get(0) instanceof PDStructureElement all)) {
            throw new IllegalStateException("the document has no structure");
        }
        PDStructureElement element = new PDStructureElement("Form", all);
        element.setPage(page);
        element.setAlternateDescription(WORDS);
        PDObjectReference reference = new PDObjectReference();
        reference.setReferencedObject(widget);
        reference.getCOSObject().setItem(COSName.PG, page);
        element.appendKid(reference);
        all.appendKid(element);
        int key = root.getParentTreeNextKey();
        widget.setStructParent(key);
        PDNumberTreeNode parents = root.getParentTree();
        if (!(parents.getCOSObject().getDictionaryObject(COSName.NUMS) instanceof COSArray nums)) {
            throw new IllegalStateException("the structure has no parent tree");
        }
        nums.add(COSInteger.get(key));
        nums.add(element.getCOSObject());
        root.setParentTreeNextKey(key + 1);
        if (parents.getCOSObject().getDictionaryObject(COSName.LIMITS) instanceof COSArray limits) {
            limits.set(1, COSInteger.get(key));
        }
    }

    /** The template keeps no place for a signature. */
    static final class NoPlace extends IOException {
        private static final long serialVersionUID = 1L;

        NoPlace() {
            super(
                    "there is no place for the digital signature, expected an element with the id "
                            + Markup.SIGNATURE_PLACE);
        }
    }
}
