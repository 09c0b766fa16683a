package eavesproof.report.pdf;

import eavesproof.report.PlainText;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** Where the words of two documents differ: each page's first line that does. */
final class TextDifference {
    private static final int MOST = 5;
    private static final int LONGEST = 120;

    /** Where a page is missing, every number after it differs, which helps nobody. */
    private static final Pattern PAGE_NUMBER = Pattern.compile("page [0-9]+ of [0-9]+ *$");

    private TextDifference() {}

    /**
     * @param found the file in hand; {@code expected} what it should be
     */
    static List<String> between(byte[] found, byte[] expected) {
        List<String> differences = new ArrayList<>();
        try (PDDocument inHand = Loader.loadPDF(found);
                PDDocument given = Loader.loadPDF(expected)) {
            if (inHand.getNumberOfPages() != given.getNumberOfPages()) {
                differences.add(
                        "The file has "
                                + inHand.getNumberOfPages()
                                + " pages, and the data give "
                                + given.getNumberOfPages()
                                + ".");
            }
            int pages = Math.max(inHand.getNumberOfPages(), given.getNumberOfPages());
            for (int page = 1; page <= pages && differences.size() < MOST; page++) {
                onPage(page, lines(inHand, page), lines(given, page), differences);
            }
        } catch (IOException | RuntimeException | StackOverflowError e) {
            // Only words for a difference that is already known.
            differences.add("The words of the file cannot be read.");
        }
        return differences;
    }

    private static void onPage(
            int page, List<String> found, List<String> expected, List<String> differences) {
        for (int i = 0; i < Math.max(found.size(), expected.size()); i++) {
            String has = i < found.size() ? found.get(i) : "";
            String should = i < expected.size() ? expected.get(i) : "";
            if (!has.equals(should)) {
                differences.add(
                        "Page "
                                + page
                                + " says "
                                + quoted(has)
                                + ", and the data give "
                                + quoted(should)
                                + ".");
                return;
            }
        }
    }

    private static List<String> lines(PDDocument document, int page) throws IOException {
        if (page > document.getNumberOfPages()) {
            return List.of();
        }
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setSortByPosition(true);
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(document)
                .lines()
                .filter(line -> !PAGE_NUMBER.matcher(line).find())
                .toList();
    }

    private static String quoted(String line) {
        String plain = PlainText.line(line).strip();
        if (plain.isEmpty()) {
            return "nothing more";
        }
        return "\"" + (plain.length() > LONGEST ? plain.substring(0, LONGEST) + "…" : plain) + "\"";
    }
}
