package org.setpower.plan.lighting.load;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.lighting.input.LightingInputs;
import org.setpower.plan.lighting.input.LightingSettings;
import org.setpower.plan.lighting.input.SupplyTables.Generator;
import org.setpower.plan.lighting.input.SupplyTables.Supply;
import org.setpower.plan.lighting.input.SupplyType;
import org.setpower.plan.lighting.load.Timeline.Span;
import org.setpower.plan.lighting.load.Timeline.Window;
import org.setpower.plan.lighting.network.Network;
import org.setpower.plan.lighting.network.Node;

/** When each source gives power. A source without times gives it always. */
public final class SupplyHours {
  private static final double BEFORE = 30;
  private static final double AFTER = 30;
  private static final double QUARTER_MINUTES = 15;

  private final Timeline timeline;
  private final Map<Integer, List<Span>> hours = new HashMap<>();
  private final Map<Integer, Generator> sets = new HashMap<>();

  public SupplyHours(LightingInputs inputs, Network network, Timeline timeline) {
    this.timeline = timeline;
    Map<String, Generator> generators = new HashMap<>();
    for (InputRow<Generator> row : LightingInputs.sorted(inputs.generators())) {
      generators.putIfAbsent(Identity.of(row.value().name()), row.value());
    }
    for (Node node : network.supplies().values()) {
      Supply supply = network.supply(node);
      Generator generator =
          supply.type() == SupplyType.GENERATOR ? generators.get(Identity.of(supply.name())) : null;
      if (generator != null) {
        hours.put(node.row(), running(generator));
        sets.put(node.row(), generator);
      } else if (supply.from() != null || supply.to() != null) {
        hours.put(node.row(), always(supply));
      }
    }
  }

  /** Before call until after wrap, without whole quarter hours off for sound: never too short. */
  private List<Span> running(Generator generator) {
    return without(onSite(generator), quiet(generator));
  }

  private List<Span> quiet(Generator generator) {
    return generator.offFrom() == null || generator.offTo() == null
        ? List.of()
        : timeline.inner(generator.offFrom(), generator.offTo());
  }

  /** Hours without those in which their source is off for sound, as that check says. */
  List<Span> withoutQuiet(Node source, List<Span> wanted) {
    Generator generator = sets.get(source.row());
    return generator == null ? wanted : without(wanted, quiet(generator));
  }

  /** Hours of a generator, off for sound or not; none of another source. */
  public List<Span> onSite(Node source) {
    Generator generator = sets.get(source.row());
    return generator == null ? List.of() : onSite(generator);
  }

  private List<Span> onSite(Generator generator) {
    int before = quarters(LightingSettings.or(generator.before(), BEFORE));
    int after = quarters(LightingSettings.or(generator.after(), AFTER));
    List<Span> spans = new ArrayList<>();
    for (Window w : timeline.windows(generator.fromDay(), generator.toDay())) {
      spans.add(new Span(w.call() - before, w.wrap() + after, w.warmest()));
    }
    return merged(spans);
  }

  private static int quarters(double minutes) {
    return (int) Math.ceil(minutes / QUARTER_MINUTES);
  }

  private List<Span> always(Supply supply) {
    return merged(timeline.powered(supply.from(), supply.to()));
  }

  private static List<Span> merged(List<Span> spans) {
    List<Span> merged = new ArrayList<>();
    for (Span span : spans.stream().sorted(Comparator.comparingInt(Span::from)).toList()) {
      Span last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
      if (last != null && span.from() <= last.to()) {
        merged.set(
            merged.size() - 1,
            new Span(
                last.from(),
                Math.max(last.to(), span.to()),
                Math.max(last.warmest(), span.warmest())));
      } else {
        merged.add(span);
      }
    }
    return merged;
  }

  private static List<Span> without(List<Span> spans, List<Span> off) {
    List<Span> left = spans;
    for (Span gap : off) {
      List<Span> next = new ArrayList<>();
      for (Span span : left) {
        if (gap.from() > span.from()) {
          next.add(new Span(span.from(), Math.min(span.to(), gap.from()), span.warmest()));
        }
        if (gap.to() < span.to()) {
          next.add(new Span(Math.max(span.from(), gap.to()), span.to(), span.warmest()));
        }
      }
      left = next.stream().filter(s -> s.from() < s.to()).toList();
    }
    return left;
  }

  /** When a source is off for sound while something is on, in words; null where it is not. */
  String offForSound(Node source, List<Span> on) {
    Generator generator = sets.get(source.row());
    if (generator == null || on.isEmpty()) {
      return null;
    }
    List<String> times = new ArrayList<>();
    Double from = generator.offFrom();
    Double to = generator.offTo();
    if (from != null && to != null && timeline.isWithin(from, to, on)) {
      times.add(Timeline.text(from) + "–" + Timeline.text(to));
    }
    if (generator.offMinutes() != null && generator.offMinutes() > 0) {
      times.add("%.0f min".formatted(generator.offMinutes()));
    }
    return times.isEmpty() ? null : String.join(", ", times);
  }

  /** Whether hours off for sound are typed of which none, or not for sure one, is taken off. */
  public boolean isOffInVain(Generator generator) {
    Double from = generator.offFrom();
    Double to = generator.offTo();
    if (from == null || to == null) {
      return (from == null) != (to == null);
    }
    return from.equals(to)
        || !timeline.isWithin(from, to, onSite(generator))
        || timeline.windows(generator.fromDay(), generator.toDay()).stream()
            .anyMatch(w -> Timeline.isUnclear(w, from, to));
  }

  /** Hours of a source; null where it is always on. */
  public List<Span> of(Node source) {
    return hours.get(source.row());
  }

  /** The first quarter hour of a span in which the source is off; −1 where it is on throughout. */
  int firstOff(Node source, Span wanted) {
    List<Span> on = of(source);
    int at = wanted.from();
    if (on != null) {
      for (Span span : on) {
        if (span.from() <= at && at < span.to()) {
          at = span.to();
        }
      }
      return at < wanted.to() ? at : -1;
    }
    return -1;
  }

  /** The hours of spans in which the source is on. */
  List<Span> within(Node source, List<Span> wanted) {
    List<Span> on = of(source);
    if (on == null) {
      return wanted;
    }
    List<Span> both = new ArrayList<>();
    for (Span span : wanted) {
      for (Span hour : on) {
        int from = Math.max(span.from(), hour.from());
        int to = Math.min(span.to(), hour.to());
        if (from < to) {
          both.add(new Span(from, to, span.warmest()));
        }
      }
    }
    return both;
  }
}
