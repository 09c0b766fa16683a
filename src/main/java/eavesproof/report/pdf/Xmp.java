package eavesproof.report.pdf;

import eavesproof.report.About;
import java.time.format.DateTimeFormatter;

/**
 * The metadata packet (ISO 16684-1) of a file that conforms to PDF/A-3a (ISO 19005-3) and PDF/UA-1
 * (ISO 14289-1). Each entry says the same as its twin in the information dictionary.
 */
final class Xmp {
    private static final String PACKET =
            """
            <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
            <x:xmpmeta xmlns:x="adobe:ns:meta/">
            <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
            <rdf:Description rdf:about=""
              xmlns:dc="http://purl.org/dc/elements/1.1/"
              xmlns:xmp="http://ns.adobe.com/xap/1.0/"
              xmlns:pdf="http://ns.adobe.com/pdf/1.3/"
              xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/"
              xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
            <dc:format>application/pdf</dc:format>
            <dc:title><rdf:Alt><rdf:li xml:lang="x-default">{title}</rdf:li></rdf:Alt></dc:title>
            <dc:creator><rdf:Seq><rdf:li>{author}</rdf:li></rdf:Seq></dc:creator>
            <dc:description><rdf:Alt><rdf:li xml:lang="x-default">{subject}</rdf:li></rdf:Alt></dc:description>
            <dc:language><rdf:Bag><rdf:li>{language}</rdf:li></rdf:Bag></dc:language>
            <xmp:CreatorTool>{program}</xmp:CreatorTool>
            <xmp:CreateDate>{issued}</xmp:CreateDate>
            <xmp:ModifyDate>{issued}</xmp:ModifyDate>
            <pdf:Producer>{program}</pdf:Producer>
            <pdfaid:part>3</pdfaid:part>
            <pdfaid:conformance>A</pdfaid:conformance>
            <pdfuaid:part>1</pdfuaid:part>
            </rdf:Description>
            <rdf:Description rdf:about=""
              xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
              xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#"
              xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
            <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
            <pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>
            <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
            <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
            <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
            <pdfaProperty:name>part</pdfaProperty:name>
            <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
            <pdfaProperty:category>internal</pdfaProperty:category>
            <pdfaProperty:description>The part of ISO 14289 that the file conforms to</pdfaProperty:description>
            </rdf:li></rdf:Seq></pdfaSchema:property>
            </rdf:li></rdf:Bag></pdfaExtension:schemas>
            </rdf:Description>
            </rdf:RDF>
            </x:xmpmeta>
            <?xpacket end="w"?>""";

    private Xmp() {}

    static String of(About about) {
        return PACKET.replace("{issued}", DateTimeFormatter.ISO_INSTANT.format(about.issued()))
                .replace("{language}", about.language())
                .replace("{program}", escape(about.program()))
                .replace("{author}", escape(about.author()))
                .replace("{subject}", escape(about.subject()))
                .replace("{title}", escape(about.title()));
    }

    /** Braces too, so that no value can be taken for the place of another. */
    private static String escape(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("{", "&#123;")
                .replace("}", "&#125;");
    }
}
