package org.setpower.plan.lighting.diagram;

/** Paper across, in 1/100 mm. */
public enum Paper {
  A4(29_700, 21_000),
  LETTER(27_940, 21_590),
  A3(42_000, 29_700),
  TABLOID(43_180, 27_940);

  /** What printers leave blank at each edge, and a little more. */
  public static final int MARGIN = 500;

  /** A line above the drawing, in which a sheet says that it is old. */
  public static final int NOTICE = 400;

  private final int width;
  private final int height;

  Paper(int width, int height) {
    this.width = width;
    this.height = height;
  }

  public int width() {
    return width;
  }

  public int height() {
    return height;
  }

  /** Width of the drawing. */
  public int innerWidth() {
    return width - 2 * MARGIN;
  }

  /** Height of the drawing. */
  public int innerHeight() {
    return height - 2 * MARGIN - NOTICE;
  }

  /** The paper of this size, either way up; A4 where it is another one. */
  public static Paper of(int width, int height) {
    for (Paper paper : values()) {
      if (Math.abs(paper.width - Math.max(width, height)) < 50
          && Math.abs(paper.height - Math.min(width, height)) < 50) {
        return paper;
      }
    }
    return A4;
  }
}
