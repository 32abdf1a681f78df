package org.setpower.plan.lighting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.setpower.base.Numbers;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.finding.Identity;
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
  private static final String SPARE = "Not in use: {0}.";
  private static final String ISOLATE = "Isolate the supply before any connection is changed.";

  private DistroLabel() {}

  /** What stands on labels. */
  static List<String> words() {
    return List.of(PLAIN, FED, STOP, UPSTREAM, TOGETHER, WITHHELD, SPARE, ISOLATE);
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
      String spare = spare(node, places);
      if (!spare.isEmpty()) {
        rows.add(line("line", null, Phrase.of(SPARE, spare)));
      }
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

  /** Outlets of a distro that nothing is plugged into, such as A-4…6, A-9. */
  private static String spare(Node distro, List<LightingPapers.PlaceRow> places) {
    Set<String> used =
        places.stream().map(LightingPapers.PlaceRow::place).collect(Collectors.toSet());
    List<Node> outlets =
        distro.below().stream()
            .filter(n -> n.kind() == Node.Kind.OUTLET && isOwn(n, distro))
            .sorted(Comparator.comparing(n -> Identity.padded(n.name())))
            .toList();
    List<String> spans = new ArrayList<>();
    for (int i = 0; i < outlets.size(); i++) {
      int first = i;
      while (i < outlets.size() && isSpare(outlets.get(i), used)) {
        i++;
      }
      if (i > first) {
        String last = outlets.get(i - 1).name();
        String number = last.substring(last.lastIndexOf('-') + 1);
        spans.add(outlets.get(first).name() + (i - first > 1 ? "…" + number : ""));
      }
    }
    return String.join(", ", spans);
  }

  private static boolean isSpare(Node outlet, Set<String> used) {
    return !used.contains(outlet.name())
        && outlet.children().stream().noneMatch(c -> used.contains(c.name()));
  }

  private static boolean isOwn(Node outlet, Node distro) {
    Node at = outlet.parent();
    while (at.kind() != Node.Kind.SUPPLY) {
      at = at.parent();
    }
    return at == distro;
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
