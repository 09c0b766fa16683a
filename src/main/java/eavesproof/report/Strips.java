package eavesproof.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** Things along a straight, set side by side, as many as fit across the paper. */
final class Strips {
    private static final int ACROSS = 12;
    private static final int FEW = 5;

    private final String caption;
    private final List<String> heads = new ArrayList<>();
    private final List<List<String>> rows = new ArrayList<>();
    private final List<String> same = new ArrayList<>();

    Strips(String caption) {
        this.caption = caption;
    }

    Strips row(String head, List<String> cells) {
        heads.add(head);
        rows.add(cells);
        return this;
    }

    /**
     * A row that is left out where nothing of it is recorded. Where nearly all agree it is said in
     * words, with those that differ by the names in the first row.
     */
    Strips rowIfRecorded(String head, List<String> cells) {
        if (cells.stream().allMatch(String::isEmpty)) {
            return this;
        }
        String most =
                cells.stream()
                        .max(Comparator.comparingInt(cell -> Collections.frequency(cells, cell)))
                        .orElseThrow();
        List<String> others = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            if (!cells.get(i).equals(most)) {
                others.add(rows.get(0).get(i) + " " + or(cells.get(i)));
            }
        }
        if (others.size() > FEW || others.size() * 2 >= cells.size()) {
            return row(head, cells);
        }
        String but = others.isEmpty() ? "" : ", but " + String.join(", ", others);
        same.add(head + ": " + or(most) + but);
        return this;
    }

    private static String or(String cell) {
        return cell.isEmpty() ? Grids.NOT_RECORDED : cell;
    }

    Report.Strip strip() {
        List<Report.Band> bands = new ArrayList<>();
        int cells = rows.isEmpty() ? 0 : rows.get(0).size();
        for (int from = 0; from < cells; from += ACROSS) {
            List<Report.BandRow> band = new ArrayList<>();
            for (int i = 0; i < rows.size(); i++) {
                List<String> across = new ArrayList<>();
                for (int n = from; n < from + ACROSS; n++) {
                    across.add(n < cells ? rows.get(i).get(n) : "");
                }
                band.add(new Report.BandRow(heads.get(i), across));
            }
            bands.add(new Report.Band(band));
        }
        String all = same.isEmpty() ? "" : " " + Verdicts.sentence(String.join("; ", same));
        return new Report.Strip(caption + all, bands);
    }
}
