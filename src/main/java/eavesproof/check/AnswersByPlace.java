package eavesproof.check;

import eavesproof.survey.Answer;
import eavesproof.survey.FactKind;
import eavesproof.survey.Place;
import eavesproof.survey.Survey;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Answers found by kind and keys without going through all of them for each subject. */
final class AnswersByPlace {
    private final Survey survey;
    private final Map<FactKind, Map<String, List<Answer>>> byInnermostKey = new LinkedHashMap<>();

    AnswersByPlace(Survey survey) {
        this.survey = survey;
    }

    /**
     * Every answer whose known keys agree with those given. Where one names them all, it alone
     * counts: a gap that lacks some of them is about another place.
     */
    List<Answer> of(FactKind kind, Map<String, String> keys) {
        List<Answer> agree =
                candidates(kind, keys).filter(answer -> agrees(answer.place(), keys)).toList();
        List<Answer> here =
                agree.stream()
                        .filter(it -> it.place().keys().keySet().containsAll(keys.keySet()))
                        .toList();
        return here.isEmpty() ? agree : here;
    }

    private Stream<Answer> candidates(FactKind kind, Map<String, String> keys) {
        String innermost = kind.keys().get(kind.keys().size() - 1);
        String id = keys.get(innermost);
        if (id == null) {
            return survey.of(kind).stream();
        }
        Map<String, List<Answer>> index =
                byInnermostKey.computeIfAbsent(
                        kind,
                        k -> {
                            Map<String, List<Answer>> map = new LinkedHashMap<>();
                            for (Answer answer : survey.of(k)) {
                                map.computeIfAbsent(
                                                answer.place().key(innermost).orElse(""),
                                                none -> new ArrayList<>())
                                        .add(answer);
                            }
                            return map;
                        });
        return Stream.concat(
                index.getOrDefault(id, List.of()).stream(),
                index.getOrDefault("", List.of()).stream());
    }

    private static boolean agrees(Place place, Map<String, String> keys) {
        return keys.entrySet().stream()
                .allMatch(
                        wanted ->
                                place.key(wanted.getKey())
                                        .map(wanted.getValue()::equals)
                                        .orElse(true));
    }
}
