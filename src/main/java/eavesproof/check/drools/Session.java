package eavesproof.check.drools;

import eavesproof.check.Engine.EngineFault;
import eavesproof.check.Engine.Match;
import eavesproof.survey.Facts;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.kie.api.KieBase;
import org.kie.api.event.rule.AfterMatchFiredEvent;
import org.kie.api.event.rule.DefaultAgendaEventListener;
import org.kie.api.runtime.KieSession;

/** One use of the engine on the facts of one job. Whatever goes wrong in it spoils the whole. */
final class Session {
    private final KieBase rules;
    private final Map<String, String> subjects;
    private final int longestMillis;

    Session(KieBase rules, Map<String, String> subjects, int longestMillis) {
        this.rules = rules;
        this.subjects = subjects;
        this.longestMillis = longestMillis;
    }

    /** On a thread of its own, since a session that hangs can only be left behind. */
    List<Match> matches(List<Facts.Fact> facts) {
        FutureTask<List<Match>> task = new FutureTask<>(() -> fired(facts));
        Thread thread = new Thread(task, "rules");
        thread.setDaemon(true);
        thread.start();
        try {
            return task.get(longestMillis, TimeUnit.MILLISECONDS);
        } catch (ExecutionException e) {
            Throwable cause = e.getCause();
            throw new EngineFault("the rules stopped with an error", cause == null ? e : cause);
        } catch (TimeoutException e) {
            task.cancel(true);
            throw new EngineFault("the rules took longer than " + longestMillis + " ms", e);
        } catch (InterruptedException e) {
            task.cancel(true);
            Thread.currentThread().interrupt();
            throw new EngineFault("the rules were interrupted", e);
        }
    }

    private List<Match> fired(List<Facts.Fact> facts) {
        int most = (int) Math.min((long) subjects.size() * facts.size(), Integer.MAX_VALUE - 1);
        KieSession session = rules.newKieSession();
        try {
            Listener listener = new Listener();
            session.addEventListener(listener);
            facts.forEach(session::insert);
            int fired = session.fireAllRules(most + 1);
            if (fired > most || fired != listener.matches.size()) {
                throw new EngineFault(
                        fired + " matches fired and " + listener.matches.size() + " heard of");
            }
            return listener.matches;
        } finally {
            session.dispose();
        }
    }

    /** Rules have nothing to do when they fire, so this is where it is known that they did. */
    private final class Listener extends DefaultAgendaEventListener {
        private final List<Match> matches = new ArrayList<>();

        @Override
        public void afterMatchFired(AfterMatchFiredEvent event) {
            org.kie.api.runtime.rule.Match match = event.getMatch();
            String rule = match.getRule().getName();
            Object subject = match.getDeclarationValue(subjects.getOrDefault(rule, ""));
            if (!(subject instanceof Facts.Fact fact)) {
                throw new EngineFault("the rule " + rule + " met " + subject);
            }
            Map<String, Object> bound = new LinkedHashMap<>();
            for (String variable : new TreeSet<>(match.getDeclarationIds())) {
                if (LayerText.isOfRule(variable)) {
                    bound.put(variable, match.getDeclarationValue(variable));
                }
            }
            matches.add(new Match(rule, fact, bound));
        }
    }
}
