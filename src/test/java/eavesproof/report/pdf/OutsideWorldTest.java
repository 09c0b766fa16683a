package eavesproof.report.pdf;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.net.httpserver.HttpServer;
import eavesproof.report.LayoutTrouble;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A document may ask for anything; it gets nothing, and whoever wrote it is told. */
class OutsideWorldTest {
    private static final List<String> HITS = Collections.synchronizedList(new ArrayList<>());
    private static final PdfWriter WRITER = new PdfWriter();

    private static HttpServer server;

    @BeforeAll
    static void listen() throws Exception {
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext(
                "/",
                exchange -> {
                    HITS.add(exchange.getRequestURI().toString());
                    exchange.sendResponseHeaders(404, -1);
                    exchange.close();
                });
        server.start();
    }

    @AfterAll
    static void stop() {
        server.stop(0);
    }

    static Stream<String> probes() {
        String http = "http://127.0.0.1:PORT/x";
        List<String> addresses =
                List.of(
                        http,
                        "file:///etc/hosts",
                        "file:/etc/hosts",
                        "/etc/hosts",
                        "jar:" + http + ".jar!/a.png",
                        "jar:file:/tmp/a.jar!/a.png",
                        "ftp://127.0.0.1:PORT/x",
                        "//127.0.0.1:PORT/x",
                        "classpath:/eavesproof/fonts/DejaVuSans.ttf",
                        "data:image/png;base64,iVBORw0KGgo=");
        List<String> ways =
                List.of(
                        "<html><head/><body><img src='URI' alt='x'/></body></html>",
                        "<html><head><link rel='stylesheet' href='URI'/></head><body>x</body></html>",
                        "<html><head><style>@import url('URI');</style></head><body>x</body></html>",
                        "<html><head><style>@import 'URI';</style></head><body>x</body></html>",
                        "<html><head/><body><p style='background: url(URI)'>x</p></body></html>",
                        "<html><head><style>ul { list-style-image: url(URI) }</style></head><body><ul><li>x</li></ul></body></html>",
                        "<html><head><style>p:before { content: url(URI) }</style></head><body><p>x</p></body></html>",
                        "<html><head><style>@page { background-image: url(URI) }</style></head><body>x</body></html>",
                        "<html><head><style>@font-face { font-family: f; src: url(URI) } p { font-family: f }</style></head><body><p>x</p></body></html>",
                        "<html><head/><body><object data='URI' alt='x'></object></body></html>",
                        "<html><head/><body><iframe src='URI'></iframe></body></html>",
                        "<html><head><base href='http://127.0.0.1:PORT/'/></head><body><img src='URI' alt='x'/></body></html>",
                        "<?xml-stylesheet type='text/css' href='URI'?><html><head/><body>x</body></html>",
                        "<!DOCTYPE html SYSTEM 'URI'><html><head/><body>x</body></html>",
                        "<!DOCTYPE html [<!ENTITY e SYSTEM 'URI'>]><html><head/><body>&e;</body></html>");
        return Stream.concat(
                ways.stream().map(way -> way.replace("URI", http)),
                addresses.stream().map(uri -> ways.get(0).replace("URI", uri)));
    }

    @ParameterizedTest
    @MethodSource("probes")
    void nothingIsFetched(String probe) {
        String page = probe.replace("PORT", Integer.toString(server.getAddress().getPort()));
        LayoutTrouble trouble =
                assertThrows(LayoutTrouble.class, () -> WRITER.write(Documents.of(page)));
        assertEquals(List.of(), HITS, trouble.getMessage());
        assertFalse(trouble.getMessage().contains("asks for ,"), trouble.getMessage());
    }

    @Test
    void aLinkForTheReaderToFollowIsNotFollowedHere() {
        String link = "http://127.0.0.1:" + server.getAddress().getPort() + "/for-readers";
        assertDoesNotThrow(
                () ->
                        WRITER.write(
                                Documents.of(
                                        Documents.page("<p><a href='" + link + "'>x</a></p>"))));
        assertEquals(List.of(), HITS);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<p>not closed",
                "<p>&nbsp;</p>",
                "<p><input type='text'/></p>",
                "<h1>a</h1><h3>b</h3>",
                "<table><tr><th colspan='100000000'>x</th></tr></table>",
                "<table><tr><td>no head</td></tr></table>",
                "<object type='application/x-eavesproof-drawing' data-drawing='none'></object>",
            })
    void whatWouldComeOutWrongInSilenceIsRefused(String body) {
        LayoutTrouble trouble =
                assertThrows(
                        LayoutTrouble.class,
                        () -> WRITER.write(Documents.of(Documents.page(body))));
        assertTrue(trouble.getMessage().startsWith(XhtmlReader.PAGE), trouble.getMessage());
    }

    @Test
    void aPageWithNoRoomForTextIsRefused() {
        String page =
                "<html><head><style>@page { margin: 400mm }</style></head><body>x</body></html>";
        assertThrows(LayoutTrouble.class, () -> WRITER.write(Documents.of(page)));
    }

    @Test
    void aTowerOfElementsIsRefused() {
        String tower = "<div>".repeat(5000) + "</div>".repeat(5000);
        assertThrows(LayoutTrouble.class, () -> WRITER.write(Documents.of(Documents.page(tower))));
    }
}
