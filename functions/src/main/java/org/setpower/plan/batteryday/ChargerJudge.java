package org.setpower.plan.batteryday;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.setpower.base.EvaluationException;
import org.setpower.base.TextEnum;
import org.setpower.charge.Charging;
import org.setpower.pack.Chemistry;
import org.setpower.pack.SelfHeating;
import org.setpower.pack.TemperatureDerating;
import org.setpower.plan.batteryday.BatteryDayInputs.Charger;
import org.setpower.plan.batteryday.BatteryDayInputs.Supply;
import org.setpower.plan.batteryday.simulation.ChargeCurve;
import org.setpower.plan.batteryday.simulation.ChargerSpec;
import org.setpower.plan.batteryday.simulation.PowerHours;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.finding.Severity;

/** Whether a charger charges, what, and how fast. */
final class ChargerJudge {
  /** A shorter warm-up is told: a large battery takes over an hour, common practice. */
  private static final double SHORT_WARM_UP = 0.5;

  /** °C of the air below which it is told that batteries do not get full. */
  private static final double COOL = 10;

  private static final double EFFICIENCY = 0.8;
  private static final int DAYS = 8;

  private final DaySettings settings;
  private final DayFrame day;
  private final InputRow<Charger> row;
  private final Charger charger;
  private final Gate.Judged<InputRow<Supply>> supply;
  private final List<Finding> findings;
  private double fullCharge = 1;

  /**
   * What is known of a charger.
   *
   * @param findings without those of the gate
   * @param spec null where it is not clear
   * @param slowest hours of the type that takes longest, from empty to full; null without
   */
  record State(InputRow<Charger> row, List<Finding> findings, ChargerSpec spec, Double slowest) {}

  /**
   * @param day null where no day is planned
   * @param supply null where it is not known
   */
  ChargerJudge(
      DaySettings settings,
      DayFrame day,
      InputRow<Charger> row,
      Gate.Judged<InputRow<Supply>> supply) {
    this.settings = settings;
    this.day = day;
    this.row = row;
    charger = row.value();
    this.supply = supply;
    findings = new ArrayList<>(row.findings());
  }

  private void add(FindingKey key, Object... arguments) {
    findings.add(Finding.of(key, arguments));
  }

  State judge(TypeList types, Collection<TypeFacts> inStock) {
    if (charger.supply() == null && supply == null && !row.unreadable().contains("supply")) {
      add(CommonFinding.BLANK_CELL, BatteryDayInputs.CHARGERS.column("supply"));
    } else if (charger.supply() != null && supply == null) {
      add(BatteryDayFinding.SUPPLY_UNKNOWN, TextEnum.shortened(charger.supply()));
    } else if (supply != null && !supply.fit()) {
      add(BatteryDayFinding.SUPPLY_UNCLEAR, TextEnum.shortened(supply.item().value().supply()));
    }
    if (DaySettings.or(charger.atOnce(), 1) > DaySettings.or(charger.channels(), 24)) {
      add(BatteryDayFinding.CHANNELS, charger.atOnce(), charger.channels());
    }
    if ((charger.powerFrom() == null) != (charger.powerTo() == null)
        || (charger.offFrom() == null) != (charger.offTo() == null)) {
      add(BatteryDayFinding.HOURS_HALF);
    }
    if (supply != null && daily().spans().isEmpty()) {
      add(BatteryDayFinding.HOURS_APART, TextEnum.shortened(supply.item().value().supply()));
    }
    List<TypeFacts> takes = takes(types, inStock);
    if (takes.isEmpty()) {
      add(BatteryDayFinding.TAKES_NOTHING);
    }
    if (day == null) {
      return new State(row, findings, null, null);
    }
    double air = judgeAir();
    Map<Integer, ChargerSpec.Rate> rates = rates(takes, air);
    judgeChannels(rates, inStock);
    boolean clear = findings.stream().allMatch(f -> f.severity() == Severity.CHECK);
    if (!clear) {
      return new State(row, findings, null, null);
    }
    Double slowest =
        rates.isEmpty()
            ? null
            : (Double)
                rates.values().stream()
                    .mapToDouble(r -> r.charging().hours(0, 1))
                    .max()
                    .orElseThrow();
    return new State(row, findings, spec(rates), slowest);
  }

  /** Whether the supply feeds the channels that are meant to charge at a time. */
  private void judgeChannels(Map<Integer, ChargerSpec.Rate> rates, Collection<TypeFacts> inStock) {
    if (rates.isEmpty() || supply == null || !supply.fit() || charger.channels() == null) {
      return;
    }
    Map.Entry<Integer, ChargerSpec.Rate> most =
        rates.entrySet().stream()
            .max(Comparator.comparingDouble(r -> r.getValue().watts()))
            .orElseThrow();
    double watts = most.getValue().watts();
    double given = supply.item().value().watts();
    double fed = Math.floor(given / watts + 1e-9);
    if (fed < together()) {
      String type =
          inStock.stream()
              .filter(t -> t.row() == most.getKey())
              .map(TypeFacts::name)
              .findFirst()
              .orElse("—");
      add(BatteryDayFinding.CHANNEL_WATTS, type, fed, together(), watts, given);
    }
  }

  /** Channels that are meant to charge at a time. */
  private double together() {
    return Math.floor(
        Math.min(charger.channels(), DaySettings.or(charger.atOnce(), charger.channels())));
  }

  private static Set<String> names(String typed) {
    return Arrays.stream(typed.split("[,;]"))
        .map(Identity::of)
        .filter(n -> !n.isEmpty())
        .collect(Collectors.toSet());
  }

  /** The types in stock that it takes by name and by mount. */
  private List<TypeFacts> takes(TypeList types, Collection<TypeFacts> inStock) {
    Set<String> named = charger.types() == null ? null : names(charger.types());
    Set<String> mounts = charger.mount() == null ? null : names(charger.mount());
    if (charger.types() != null) {
      Arrays.stream(charger.types().split("[,;]"))
          .filter(n -> !Identity.of(n).isEmpty() && types.find(n) == null)
          .map(n -> types.refused(n.strip()))
          .distinct()
          .forEach(findings::add);
    }
    return inStock.stream()
        .filter(t -> named == null || named.contains(Identity.of(t.name())))
        .filter(
            t ->
                mounts == null || t.mountIdentity().isEmpty() || mounts.contains(t.mountIdentity()))
        .toList();
  }

  /** °C of the air there. */
  private double judgeAir() {
    double outdoors = day.air().lowest();
    double air = outdoors;
    Double typed = charger.air() == null ? settings.chargersAir() : charger.air();
    if (row.unreadable().contains("air") || typed == null) {
      if (!row.unreadable().contains("air")) {
        add(BatteryDayFinding.AIR_BLANK, outdoors);
      }
    } else {
      air = settings.units().toCelsius(typed);
    }
    double hottest = typed == null ? day.air().highest() : air;
    if (hottest > Charging.HOTTEST) {
      add(BatteryDayFinding.CHARGES_HOT, hottest);
    } else if (hottest >= Charging.WARM_AIR) {
      add(BatteryDayFinding.CHARGES_WARM, hottest);
    }
    if (air >= Charging.COLDEST && air < COOL) {
      double taken = TemperatureDerating.chargeTaken(Chemistry.LI_ION, air);
      add(BatteryDayFinding.CHARGES_COOL, air, 1 - taken);
      fullCharge = taken;
    }
    if (air < Charging.COLDEST) {
      add(BatteryDayFinding.CHARGES_COLD, air);
    } else if (outdoors < Charging.COLDEST) {
      judgeWarmUp(outdoors, air);
    }
    return air;
  }

  private void judgeWarmUp(double outdoors, double air) {
    double least = SelfHeating.leastWarmUp(outdoors, Charging.COLDEST, air);
    Double hours = warmUp();
    if (hours == null) {
      add(BatteryDayFinding.WARM_UP_BLANK, outdoors);
    } else if (hours < least) {
      add(BatteryDayFinding.WARM_UP_IMPOSSIBLE, hours, Double.isInfinite(least) ? 99.0 : least);
    } else if (hours < SHORT_WARM_UP) {
      add(BatteryDayFinding.WARM_UP_SHORT, hours);
    }
  }

  /** As typed here, else in Project; null where neither is known. */
  private Double warmUp() {
    return charger.warmUp() == null && !row.unreadable().contains("warmUp")
        ? settings.warmUp()
        : charger.warmUp();
  }

  private Map<Integer, ChargerSpec.Rate> rates(List<TypeFacts> takes, double air) {
    Map<Integer, ChargerSpec.Rate> rates = new TreeMap<>();
    if (charger.amps() == null) {
      return rates;
    }
    double efficiency = DaySettings.or(charger.efficiency(), EFFICIENCY);
    for (TypeFacts type : takes) {
      double volts = volts(type);
      double watts =
          charger.amps() * type.cellsAt(volts) * type.chemistry().fullVolts() / efficiency;
      boolean lithium =
          type.chemistry().family() == Chemistry.LI_ION || type.chemistry() == Chemistry.LFP;
      if (!lithium) {
        add(BatteryDayFinding.NOT_CHARGED, type.name(), type.chemistry().word());
      } else if (charger.amps() > type.ampHoursAt(volts)) {
        add(BatteryDayFinding.TOO_FAST, type.name(), charger.amps(), type.ampHoursAt(volts));
      } else if (supply != null && supply.fit() && watts > supply.item().value().watts()) {
        add(BatteryDayFinding.NO_WATTS, type.name(), watts, supply.item().value().watts());
      } else if (air >= Charging.COLDEST && air <= Charging.HOTTEST) {
        rate(type, volts, air, watts, rates);
      }
    }
    return rates;
  }

  /** The nominal voltage at which it charges a type; of two that are not known the lower one. */
  private double volts(TypeFacts type) {
    if (type.outputs().size() > 1 && charger.volts() != null) {
      Double output = type.output(charger.volts());
      if (output != null) {
        return output;
      }
      add(BatteryDayFinding.CHARGE_VOLTS_UNKNOWN, type.name(), charger.volts());
    } else if (type.outputs().size() > 1 && !row.unreadable().contains("volts")) {
      add(BatteryDayFinding.CHARGE_VOLTS_BLANK, type.name(), type.lowest());
    }
    return type.lowest();
  }

  private void rate(
      TypeFacts type,
      double volts,
      double air,
      double watts,
      Map<Integer, ChargerSpec.Rate> rates) {
    try {
      ChargeCurve curve =
          ChargeCurve.of(
              type.chemistry(),
              type.cellsAt(volts),
              type.ampHoursAt(volts),
              type.milliohmsAt(volts),
              charger.amps(),
              air);
      double efficiency = DaySettings.or(charger.efficiency(), EFFICIENCY);
      double wattHours = Charging.wallWattHours(type.wattHours(), 0, 1, efficiency);
      rates.put(type.row(), new ChargerSpec.Rate(curve, watts, wattHours));
    } catch (EvaluationException e) {
      add(BatteryDayFinding.TEMPERATURE, type.chemistry().word(), air);
    }
  }

  private ChargerSpec spec(Map<Integer, ChargerSpec.Rate> rates) {
    PowerHours planned = planned();
    return new ChargerSpec(
        row.number(),
        supply.row(),
        (int) together(),
        rates,
        fullCharge,
        DaySettings.or(charger.usable(), 1),
        DaySettings.or(charger.roundTrip(), 0) / 120,
        day.air().lowest() < Charging.COLDEST ? DaySettings.or(warmUp(), 0) : 0,
        planned,
        less(planned),
        lastChange());
  }

  /** The hour after which nobody changes at it until the next call; infinite: somebody does. */
  private double lastChange() {
    return settings.lastChange() == null
        ? Double.POSITIVE_INFINITY
        : Math.max(settings.hour(settings.lastChange()), day.wrap());
  }

  /** Its own hours, as far as its supply is there on these dates. */
  private PowerHours planned() {
    Supply feeds = supply.item().value();
    PowerHours there = daily();
    if (day == null) {
      return there;
    }
    double from = feeds.fromDay() == null ? -48 : begin(feeds.fromDay());
    double to = feeds.toDay() == null ? 24.0 * DAYS + 48 : begin(feeds.toDay().plusDays(1));
    return to > from ? PowerHours.within(there.within(from, to)) : PowerHours.within(List.of());
  }

  /** The same without the hours of which it is known that the supply is gone. */
  private PowerHours less(PowerHours there) {
    Supply feeds = supply.item().value();
    if (day != null && feeds.goneOn() != null) {
      double midnight = begin(feeds.goneOn()) - settings.begins();
      double gone =
          midnight
              + (feeds.goneFrom() == null ? settings.begins() : settings.hour(feeds.goneFrom()));
      double back =
          feeds.goneTo() == null
              ? begin(feeds.goneOn().plusDays(1))
              : midnight + settings.end(feeds.goneTo(), gone - midnight);
      return there.without(new PowerHours.Span(gone, back));
    }
    return there;
  }

  /** The hour at which a date begins. */
  private double begin(LocalDate date) {
    return 24.0 * ChronoUnit.DAYS.between(day.date(), date) + settings.begins();
  }

  /** Its own hours and those of its supply, every day. */
  private PowerHours daily() {
    Supply feeds = supply.item().value();
    return PowerHours.daily(
            span(charger.powerFrom(), charger.powerTo()),
            span(charger.offFrom(), charger.offTo()),
            DAYS)
        .and(PowerHours.daily(span(feeds.powerFrom(), feeds.powerTo()), null, DAYS));
  }

  private static PowerHours.Span span(java.time.LocalTime from, java.time.LocalTime to) {
    if (from == null || to == null) {
      return null;
    }
    double begin = from.toSecondOfDay() / 3600.0;
    double end = to.toSecondOfDay() / 3600.0;
    return new PowerHours.Span(begin, end <= begin ? end + 24 : end);
  }
}
