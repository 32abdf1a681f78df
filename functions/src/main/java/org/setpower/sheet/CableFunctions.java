package org.setpower.sheet;

import org.setpower.base.Unit;
import org.setpower.cable.CableReason;

/** CABLE: wire and runs. */
public final class CableFunctions {
  private CableFunctions() {}

  static final Group GROUP = new Group("CABLE", "wire and runs");

  public static final FunctionSpec AREA =
      GROUP
          .function("AREA")
          .says("Returns the cross-section of a cable size")
          .takes(Parameters.SIZE)
          .gives(Unit.SQUARE_MILLIMETRE, "Cross-section of one conductor")
          .formula("AWG: π/4·d², d = 0.127·92^((36−n)/39) mm")
          .source("ASTM B258; IEC 60228 nominal areas")
          .refuses(
              CableReason.UNKNOWN_SIZE, CableReason.NOT_A_GAUGE, CableReason.NOT_A_STANDARD_AREA)
          .example("=CABLE.AREA(\"2.5 mm²\")", 2.5)
          .by(a -> a.get(Parameters.SIZE).area());
}
