package org.setpower.plan.lighting.diagram;

/** What a line, a text or an area means; a reader who sees no colour reads the words. */
public enum Ink {
  PLAIN(0x1E2A2F),
  SOFT(0x5A6B70),
  HAIR(0xD5DCDE),
  ACCENT(0x1F5F6B),
  CHECK(0x7A4F00),
  STOP(0x9B1C1C),
  STOP_GROUND(0xFBE9E7),
  /** Cores, as IEC 60445 and the habit of the trade in North America name them. */
  BROWN(0x7A4A1E),
  BLACK(0x000000),
  GREY(0x8A8F92),
  RED(0xC62828),
  BLUE(0x1F5FBF),
  WHITE(0xFFFFFF),
  GREEN(0x2E8B3A),
  YELLOW(0xF2C200);

  private final int colour;

  Ink(int colour) {
    this.colour = colour;
  }

  /** Red, green and blue. */
  public int colour() {
    return colour;
  }
}
