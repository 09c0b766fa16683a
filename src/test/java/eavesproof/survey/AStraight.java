package eavesproof.survey;

import eavesproof.job.Run.Bracket;
import eavesproof.job.Run.CrossTilt;
import eavesproof.job.Run.End;
import eavesproof.job.Run.Fascia;
import eavesproof.job.Run.Fitting;
import eavesproof.job.Run.Joint;
import eavesproof.job.Run.KeepClear;
import eavesproof.job.Run.Reading;
import eavesproof.job.Run.Straight;
import eavesproof.job.Said;
import java.util.ArrayList;
import java.util.List;

/** A straight for tests: 10 m between stop ends, with nothing on it until it is put there. */
final class AStraight {
    final String id;
    Double lengthMm = 10_000.0;
    String measuredWith = null;
    End left = new End("stop end", null);
    End right = new End("stop end", null);
    List<Reading> readings = new ArrayList<>();
    List<Bracket> brackets = new ArrayList<>();
    List<Fitting> fittings = new ArrayList<>();
    List<Joint> joints = new ArrayList<>();
    List<KeepClear> zones = new ArrayList<>();
    List<CrossTilt> tilts = null;
    Fascia fascia = new Fascia(0.0, 10_000.0, null, null, Said.nothing(), Said.nothing(), null);

    AStraight(String id) {
        this.id = id;
    }

    AStraight bracket(String name, Double stationMm) {
        brackets.add(new Bracket(name, stationMm, 4, 4, "stainless steel", null, null));
        return this;
    }

    AStraight fitting(String name, Double stationMm, String screwed) {
        fittings.add(new Fitting(name, null, stationMm, screwed, null, "yes", null));
        return this;
    }

    AStraight joint(String name, String kind, Double stationMm, String screwed) {
        joints.add(new Joint(name, kind, stationMm, null, null, null, null, screwed, null));
        return this;
    }

    AStraight expansion(String name, Double stationMm, Double gapMm, Double insertionMm) {
        joints.add(
                new Joint(
                        name, "expansion", stationMm, null, null, gapMm, insertionMm, "no", null));
        return this;
    }

    AStraight zone(String name, Double fromMm, Double toMm) {
        zones.add(new KeepClear(name, null, fromMm, toMm));
        return this;
    }

    /** Of the sole from set-up s1. */
    AStraight reading(double stationMm, double belowMm) {
        return reading(stationMm, "sole", belowMm, "s1", null);
    }

    AStraight reading(Double stationMm, String surface, Double belowMm, String setUp, String tie) {
        readings.add(new Reading(stationMm, surface, belowMm, setUp, null, tie));
        return this;
    }

    Straight build() {
        return new Straight(
                id,
                lengthMm,
                measuredWith,
                left,
                right,
                readings,
                brackets,
                fittings,
                joints,
                zones,
                tilts,
                fascia,
                null);
    }
}
