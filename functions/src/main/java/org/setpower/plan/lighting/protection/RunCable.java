package org.setpower.plan.lighting.protection;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.setpower.base.EvaluationException;
import org.setpower.base.PhaseSystem;
import org.setpower.cable.CableRun;
import org.setpower.cable.CableSize;
import org.setpower.cable.Conductor;
import org.setpower.cable.InstallationMethod;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.lighting.input.CableTables.Run;
import org.setpower.plan.lighting.input.CableType;
import org.setpower.plan.lighting.input.CoreSet;
import org.setpower.plan.lighting.input.LightingFinding;
import org.setpower.plan.lighting.input.LightingSettings;
import org.setpower.plan.lighting.input.MeasureSystem;
import org.setpower.plan.lighting.load.RunImpedance;
import org.setpower.plan.lighting.network.Node;

/**
 * A row of Cable runs as it is understood.
 *
 * @param size null where it cannot be read
 * @param cores what is typed, or what the place needs
 * @param laid null where it is not known
 * @param metres one way; NaN where it is not known
 * @param parallel equal cables side by side
 * @param findings what is wrong with these cells
 */
public record RunCable(
    Node node,
    Run typed,
    CableSize size,
    CoreSet cores,
    InstallationMethod laid,
    double metres,
    int parallel,
    List<Finding> findings) {
  private static final double METRES_PER_KM = 1000;
  private static final double COLD = 20;

  /** Cores in one sheath, with earth: 5G16. */
  private static final Pattern SHEATHED = Pattern.compile("\\d\\s*[Gg]\\s*\\d");

  /** Heavy rubber cables and their halogen-free and polyurethane likes (HD 22, EN 50525-2-21). */
  private static final Pattern RUBBER = Pattern.compile("H07(RN|BN4|BB|BQ|ZZ).*");

  /** Understands a row. */
  public static RunCable of(Node node, Run typed, LightingSettings settings) {
    List<Finding> findings = new ArrayList<>();
    CableSize size = size(typed.size(), settings.units());
    if (size == null && typed.size() != null) {
      findings.add(Finding.of(LightingFinding.SIZE_UNREADABLE, typed.size()));
    }
    InstallationMethod laid = settings.installation();
    if (typed.installation() != null) {
      laid = LightingSettings.installation(typed.installation());
      if ("CLOSEDDRUM".equals(Identity.of(typed.installation()))) {
        findings.add(Finding.of(LightingFinding.CLOSED_DRUM));
      } else if (laid == null) {
        findings.add(Finding.of(LightingFinding.INSTALLATION_WRONG, typed.installation()));
      }
    }
    sheath(typed.size(), typed.type(), typed.cores()).forEach(findings::add);
    double metres = typed.length() == null ? Double.NaN : settings.units().toMetres(typed.length());
    pieces(typed, findings);
    if (typed.makersRating() != null && typed.ratingSource() == null) {
      findings.add(Finding.of(LightingFinding.MAKER_SOURCE));
    }
    return new RunCable(
        node,
        typed,
        size,
        typed.cores() == null ? cores(node, typed) : typed.cores(),
        laid,
        metres,
        typed.parallel() == null ? 1 : (int) Math.floor(typed.parallel()),
        findings);
  }

  /** A size in a plan: 6 may be a gauge or an area, and a metric plan has areas. */
  public static CableSize size(String text, MeasureSystem units) {
    CableSize size = size(text);
    boolean bare = size == null && text != null && units == MeasureSystem.METRIC;
    return bare ? size(text + " mm²") : size;
  }

  /** A size as typed; null where it is none, or one without a resistance. */
  public static CableSize size(String text) {
    if (text == null) {
      return null;
    }
    try {
      CableSize size = CableSize.parse(text);
      return Conductor.isKnown(size) ? size : null;
    } catch (EvaluationException unknown) {
      return null;
    }
  }

  /** Where what stands on the sheath says something else than the cells beside it. */
  public static List<Finding> sheath(String size, CableType type, CoreSet cores) {
    List<Finding> findings = new ArrayList<>();
    int marked = marked(size, type);
    if (cores != null && marked > (cores.isSingle() ? 1 : 0) && marked != cores.count()) {
      findings.add(Finding.of(LightingFinding.CORES_DIFFER, size, cores.word()));
    }
    boolean sheathed = size != null && SHEATHED.matcher(size).find();
    if (type == CableType.FEEDER && (sheathed || cores != null && !cores.isSingle())) {
      findings.add(Finding.of(LightingFinding.FEEDER_CORES, sheathed ? size : cores.word()));
    }
    String sheath = size == null ? "" : CableSize.type(size);
    CableType is =
        sheath.startsWith("H05")
            ? CableType.CORD
            : RUBBER.matcher(sheath).matches() ? CableType.RUBBER : null;
    boolean flexible = type == CableType.CORD || type == CableType.RUBBER;
    if (is != null && type != null && (flexible ? is != type : type == CableType.BUILDING)) {
      findings.add(Finding.of(LightingFinding.TYPE_DIFFERS, sheath, type.word()));
    }
    return findings;
  }

  /** Cores that Size names, earth included; 0 where it names none or its type has circuits. */
  static int marked(String size, CableType type) {
    // the cores of American building cable do not count its bare earth conductor
    boolean counts = type != CableType.MULTI_CIRCUIT && type != CableType.BUILDING;
    return size == null || !counts ? 0 : CableSize.cores(size);
  }

  /** What Size names, else what the place needs. */
  private static CoreSet cores(Node node, Run typed) {
    CoreSet needed = needed(node, typed.type());
    int marked = marked(typed.size(), typed.type());
    if (marked == 0 || marked == needed.count() || needed.isSingle() && marked == 1) {
      return needed;
    }
    return switch (marked) {
      case 3 -> Integer.bitCount(node.legs()) == 2 ? CoreSet.LINE_TO_LINE : CoreSet.THREE;
      case 4 -> Integer.bitCount(node.legs()) == 2 ? CoreSet.SPLIT : CoreSet.FOUR;
      case 5 -> CoreSet.FIVE;
      default -> needed;
    };
  }

  private static void pieces(Run typed, List<Finding> findings) {
    if (typed.pieces() == null) {
      return;
    }
    List<Double> pieces = Pieces.parse(typed.pieces());
    double sum = pieces.stream().mapToDouble(p -> p).sum();
    if (pieces.isEmpty()) {
      findings.add(Finding.of(LightingFinding.PIECES_UNREADABLE, typed.pieces()));
    } else if (typed.length() != null && sum < typed.length() * (1 - 1e-9)) {
      findings.add(Finding.of(LightingFinding.PIECES_SHORT, sum, typed.length()));
    }
  }

  private static CoreSet needed(Node node, CableType type) {
    boolean single = type == CableType.FEEDER;
    return switch (Integer.bitCount(node.legs())) {
      case 3 -> single ? CoreSet.FIVE_SINGLE : CoreSet.FIVE;
      case 2 ->
          node.hasNeutral()
              ? single ? CoreSet.FOUR_SINGLE : CoreSet.SPLIT
              : single ? CoreSet.THREE_SINGLE : CoreSet.LINE_TO_LINE;
      default -> single ? CoreSet.THREE_SINGLE : CoreSet.THREE;
    };
  }

  /** How the leaf functions see its supply. */
  public PhaseSystem system() {
    return node.legs() == 7 ? PhaseSystem.THREE : PhaseSystem.ONE;
  }

  /** One conductor of the loaded cable. */
  public RunImpedance impedance() {
    if (size == null || Double.isNaN(metres)) {
      return RunImpedance.NONE;
    }
    CableRun run = CableRun.of(size, metres, PhaseSystem.ONE, 1, CableRun.LOADED_TEMP, parallel);
    return new RunImpedance(run.ohms(), run.reactance());
  }

  /** Voltage lost over it, as {@code CABLE.DROP} gives it; NaN where it is not known. */
  public double drop(double amps, double powerFactor) {
    return size == null || Double.isNaN(metres)
        ? Double.NaN
        : CableRun.of(size, metres, system(), powerFactor, CableRun.LOADED_TEMP, parallel)
            .drop(amps);
  }

  /** Leg and earth conductor together at 20 °C, Ω; NaN where it is not known. */
  double loopOhms() {
    return size == null || Double.isNaN(metres)
        ? Double.NaN
        : 2 * Conductor.of(size).ohms(COLD) * metres / METRES_PER_KM / parallel;
  }
}
