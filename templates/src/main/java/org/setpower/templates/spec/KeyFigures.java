package org.setpower.templates.spec;

import java.util.List;

/**
 * A band of headline figures, side by side.
 *
 * @param title the heading above it
 * @param across how many stand beside each other
 * @param figures the figures
 */
public record KeyFigures(String title, int across, List<KeyFigure> figures) implements Block {
  /** Rows of one figure: label, value, note, gap. */
  public static final int TALL = 4;

  public static KeyFigures of(String title, int across, KeyFigure... figures) {
    return new KeyFigures(title, across, List.of(figures));
  }

  @Override
  public int height() {
    return (figures.size() + across - 1) / across * TALL;
  }
}
