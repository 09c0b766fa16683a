package eavesproof.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** How a report was made, as the file {@code made.json} inside the report. */
public final class MadeFile {
    public static final String NAME = "made.json";

    private MadeFile() {}

    public static byte[] write(Made made) {
        Map<String, @Nullable Object> all = new LinkedHashMap<>();
        all.put("program", made.program());
        all.put("template", made.template());
        all.put("template_sha256", made.templateSha256());
        all.put("issued", made.issued());
        all.put("paper", made.paper());
        all.put("replaces", made.replaces());
        all.put("signer", made.signer().map(MadeFile::signer).orElse(null));
        all.put("photographs", made.photographs().stream().map(MadeFile::photograph).toList());
        all.put(
                "signature_pictures",
                made.signaturePictures().stream().map(MadeFile::signaturePicture).toList());
        return JsonLayout.of(all).getBytes(StandardCharsets.UTF_8);
    }

    private static Map<String, Object> signer(Made.Signer signer) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("name", signer.name());
        all.put("fingerprint", signer.fingerprint());
        all.put("self_made", signer.selfMade());
        return all;
    }

    private static Map<String, @Nullable Object> photograph(Made.Photograph photograph) {
        Map<String, @Nullable Object> all = new LinkedHashMap<>();
        all.put("id", photograph.id());
        all.put("file_sha256", photograph.fileSha256().orElse(null));
        all.put("missing", photograph.missing());
        all.put("place", photograph.place().orElse(null));
        all.put("print_sha256", photograph.print().map(Made.Print::sha256).orElse(null));
        all.put("width_px", photograph.print().map(Made.Print::widthPx).orElse(0));
        all.put("height_px", photograph.print().map(Made.Print::heightPx).orElse(0));
        return all;
    }

    private static Map<String, Object> signaturePicture(Made.SignaturePicture picture) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("person", picture.person());
        all.put("file_sha256", picture.fileSha256());
        all.put("print_sha256", picture.print().sha256());
        all.put("width_px", picture.print().widthPx());
        all.put("height_px", picture.print().heightPx());
        return all;
    }

    /** Empty where the file is not one that was written here. */
    public static Optional<Made> read(byte[] file) {
        return OwnJson.read(file).map(MadeFile::made);
    }

    private static Made made(JsonNode all) {
        List<Made.Photograph> photographs = new ArrayList<>();
        for (JsonNode one : all.path("photographs")) {
            photographs.add(
                    new Made.Photograph(
                            text(one, "id"),
                            known(one, "file_sha256"),
                            print(one),
                            text(one, "missing"),
                            known(one, "place")));
        }
        List<Made.SignaturePicture> signatures = new ArrayList<>();
        for (JsonNode one : all.path("signature_pictures")) {
            print(one)
                    .ifPresent(
                            print ->
                                    signatures.add(
                                            new Made.SignaturePicture(
                                                    text(one, "person"),
                                                    text(one, "file_sha256"),
                                                    print)));
        }
        JsonNode signer = all.path("signer");
        return new Made(
                text(all, "program"),
                text(all, "template"),
                text(all, "template_sha256"),
                text(all, "issued"),
                text(all, "paper"),
                text(all, "replaces"),
                signer.isObject()
                        ? Optional.of(
                                new Made.Signer(
                                        text(signer, "name"),
                                        text(signer, "fingerprint"),
                                        signer.path("self_made").asBoolean()))
                        : Optional.empty(),
                photographs,
                signatures);
    }

    private static Optional<Made.Print> print(JsonNode picture) {
        return known(picture, "print_sha256")
                .map(
                        sha256 ->
                                new Made.Print(
                                        sha256,
                                        picture.path("width_px").asInt(),
                                        picture.path("height_px").asInt()));
    }

    private static String text(JsonNode node, String key) {
        return node.path(key).asText();
    }

    private static Optional<String> known(JsonNode node, String key) {
        return node.path(key).isTextual() ? Optional.of(text(node, key)) : Optional.empty();
    }
}
