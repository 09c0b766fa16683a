package eavesproof.exchange;

import eavesproof.exchange.Shape.Field;
import eavesproof.exchange.Shape.ListOf;
import eavesproof.exchange.Shape.MapOf;
import eavesproof.exchange.Shape.Thing;
import eavesproof.job.Said;
import eavesproof.job.Words;
import java.util.List;

/** The keys that come again and again. */
final class Keys {
    static final Leaf.Word YES_NO = new Leaf.Word(Words.YES_NO_UNKNOWN);
    static final Leaf.Date DATE = new Leaf.Date();

    private Keys() {}

    static Field key(String name, Shape shape) {
        return Field.of(name, shape);
    }

    static Field id(IdKind kind) {
        return key("id", new Leaf.Id(kind)).must();
    }

    static Field ref(String name, IdKind kind) {
        return key(name, new Leaf.Ref(kind));
    }

    static Field word(String name, List<String> words) {
        return key(name, new Leaf.Word(words));
    }

    static Field words(String name, List<String> each) {
        return key(name, new ListOf(new Leaf.Word(each)));
    }

    static Field lines(String name) {
        return key(name, new ListOf(Texts.LINE));
    }

    static Field list(String name, Thing element) {
        return key(name, new ListOf(element));
    }

    static Field map(String name, IdKind kind, Thing element) {
        return key(name, new MapOf(new Leaf.Id(kind), element));
    }

    /** A circumstance or an approval: what it is, and who says so. */
    static Field said(String name, String what, Leaf is) {
        return key(
                name,
                Thing.of(
                        "said-" + what,
                        Said.class,
                        key("is", is),
                        word("how", Words.HOW),
                        key("by", Texts.LINE).says("who measured, saw, told or assumed it"),
                        key("reference", Texts.LINE).says("where it can be found")));
    }
}
