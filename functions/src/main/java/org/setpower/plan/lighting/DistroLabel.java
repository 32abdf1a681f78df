package org.setpower.plan.lighting;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.setpower.base.Numbers;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.lighting.input.SupplyTables.Supply;
import org.setpower.plan.lighting.network.Network;
import org.setpower.plan.lighting.network.Node;
import org.setpower.plan.lighting.result.LightingPapers;

/** The rows of the label of a distro: its name, what feeds it, its outlets, a caution. */
final class DistroLabel {
  private static final String PLAIN = "{0}";

  /** Of an outlet where nothing is fit. */
  private static final String STOP_WORD = Verdict.STOP.code();

  private static final String FED = "Fed from {0}, breaker {1} A.";
  private static final String STOP = "stop: do not connect it. The reason is on Summary.";
  private static final String UPSTREAM =
      "stop: do not connect it. {0}, which feeds it, is a stop. The reason is on Summary.";
  private static final String TOGETHER = "RCDs behind {0} trip with it; accepted: {1}.";
  private static final String WITHHELD = "Not on this label, because of a stop: {0,number,0}.";
  private static final String ISOLATE = "Isolate the supply before any connection is changed.";

  private DistroLabel() {}

  /** What stands on labels. */
  static List<String> words() {
    return List.of(PLAIN, FED, STOP, UPSTREAM, TOGETHER, WITHHELD, ISOLATE);
  }

  static List<LightingPapers.LabelRow> of(
      Gate.Judged<InputRow<Supply>> judged,
      LightingCalculation plan,
      List<LightingPapers.PlaceRow> places) {
    Network network = plan.network();
    Supply typed = judged.item().value();
    List<LightingPapers.LabelRow> rows = new ArrayList<>();
    String where =
        String.join(
            ", ", Stream.of(typed.location(), typed.electrician()).filter(t -> t != null).toList());
    rows.add(line("name", typed.name(), Phrase.of(PLAIN, where)));
    Phrase day = plan.nights().label();
    if (day != null) {
      rows.add(line("line", null, day));
    }
    Node node = network.supplies().get(judged.row());
    String upstream = plan.stopUpstream(node.parent());
    if (judged.fit() && upstream == null) {
      String from = LightingTables.fedFrom(node);
      Double breaker = LightingTables.known(node.protectingBreaker());
      if (from != null && breaker != null) {
        rows.add(line("line", null, Phrase.of(FED, from, Numbers.format(breaker))));
      }
      int withheld = 0;
      for (LightingPapers.PlaceRow place : places) {
        if (place.distro().equals(typed.name())) {
          rows.add(
              new LightingPapers.LabelRow(
                  "outlet",
                  place.place(),
                  Phrase.of(PLAIN, place.plugged().isEmpty() ? STOP_WORD : place.plugged()),
                  place.legs(),
                  place.breaker(),
                  place.rcd(),
                  place.amps()));
          withheld += place.withheld();
        }
      }
      accepted(node, plan)
          .forEach((who, at) -> rows.add(line("line", null, Phrase.of(TOGETHER, at, who))));
      if (withheld > 0) {
        rows.add(line("stop", null, Phrase.of(WITHHELD, withheld)));
      }
    } else {
      Phrase why = upstream == null ? Phrase.of(STOP) : Phrase.of(UPSTREAM, upstream);
      rows.add(line("stop", null, why));
    }
    rows.add(line("caution", null, Phrase.of(ISOLATE)));
    rows.add(line("", null, null));
    return rows;
  }

  /** By the role that accepts it, the outlets whose RCD trips with one behind it. */
  private static Map<String, String> accepted(Node distro, LightingCalculation plan) {
    Map<String, String> outlets = new TreeMap<>();
    for (Node outlet : distro.children()) {
      String who = outlet.kind() == Node.Kind.RUN ? null : plan.outletJudge().acceptedBy(outlet);
      if (who != null) {
        outlets.merge(who, outlet.name(), (all, one) -> all + ", " + one);
      }
    }
    return outlets;
  }

  private static LightingPapers.LabelRow line(String kind, String place, Phrase text) {
    return new LightingPapers.LabelRow(kind, place, text, null, null, null, null);
  }
}
