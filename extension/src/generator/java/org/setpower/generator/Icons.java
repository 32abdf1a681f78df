package org.setpower.generator;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Scanner;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;

/**
 * The pictures of the menu and toolbar, from our SVG drawings: one path each on a field of 32 by 32,
 * of the commands M, L, H, V, C and Z with absolute places, in one colour.
 */
final class Icons {
  private static final double FIELD = 32;
  private static final List<Integer> SIZES = List.of(16, 26, 32);
  private static final Pattern ATTRIBUTE = Pattern.compile("\\s(d|stroke|stroke-width)=\"([^\"]*)\"");

  private Icons() {}

  /** Writes {@code name_16.png} … for every {@code name.svg}. */
  static void draw(Path drawings, Path target) throws IOException {
    System.setProperty("java.awt.headless", "true");
    Files.createDirectories(target);
    try (Stream<Path> files = Files.list(drawings)) {
      for (Path drawing : files.sorted().toList()) {
        String name = drawing.getFileName().toString().replaceFirst("\\.svg$", "");
        for (int size : SIZES) {
          Path picture = target.resolve(name + "_" + size + ".png");
          ImageIO.write(picture(Files.readString(drawing), size), "png", picture.toFile());
        }
      }
    }
  }

  private static BufferedImage picture(String svg, int size) {
    Path2D path = new Path2D.Double();
    Color colour = Color.GRAY;
    float width = 1;
    Matcher attribute = ATTRIBUTE.matcher(svg);
    while (attribute.find()) {
      switch (attribute.group(1)) {
        case "d" -> path = path(attribute.group(2));
        case "stroke" -> colour = Color.decode(attribute.group(2));
        default -> width = Float.parseFloat(attribute.group(2));
      }
    }
    BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
    Graphics2D pen = image.createGraphics();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    pen.scale(size / FIELD, size / FIELD);
    pen.setColor(colour);
    pen.setStroke(new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    pen.draw(path);
    pen.dispose();
    return image;
  }

  private static Path2D path(String words) {
    Path2D path = new Path2D.Double();
    try (Scanner scanner = new Scanner(words).useLocale(java.util.Locale.ROOT)) {
      while (scanner.hasNext()) {
        step(path, scanner.next(), scanner);
      }
    }
    return path;
  }

  private static void step(Path2D path, String command, Scanner in) {
    switch (command) {
      case "M" -> path.moveTo(in.nextDouble(), in.nextDouble());
      case "L" -> path.lineTo(in.nextDouble(), in.nextDouble());
      case "H" -> path.lineTo(in.nextDouble(), path.getCurrentPoint().getY());
      case "V" -> path.lineTo(path.getCurrentPoint().getX(), in.nextDouble());
      case "C" ->
          path.curveTo(
              in.nextDouble(),
              in.nextDouble(),
              in.nextDouble(),
              in.nextDouble(),
              in.nextDouble(),
              in.nextDouble());
      case "Z" -> path.closePath();
      default -> throw new IllegalArgumentException("not a step of our drawings: " + command);
    }
  }
}
