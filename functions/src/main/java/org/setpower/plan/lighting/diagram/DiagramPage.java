package org.setpower.plan.lighting.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.setpower.plan.lighting.diagram.Element.Symbol;
import org.setpower.plan.lighting.diagram.Element.Text;

/**
 * A page of the diagram. Its elements are counted from the upper left corner of what is printed,
 * inside the margins.
 *
 * @param title what a screen reader calls it
 */
public record DiagramPage(Paper paper, String title, List<Element> elements) {
  public DiagramPage {
    elements = List.copyOf(elements);
  }

  /** All texts, those of symbols too. */
  public List<Text> texts() {
    List<Text> texts = new ArrayList<>();
    all(elements)
        .forEach(
            e -> {
              if (e instanceof Text text) {
                texts.add(text);
              }
            });
    return texts;
  }

  private static Stream<Element> all(List<Element> elements) {
    return elements.stream().flatMap(e -> e instanceof Symbol s ? all(s.parts()) : Stream.of(e));
  }

  /** Its words, for who cannot see it. */
  public String description() {
    StringBuilder words = new StringBuilder();
    for (Element element : elements) {
      if (element instanceof Text text) {
        words.append(words.isEmpty() ? "" : " ").append(text.words());
      }
    }
    return words.toString();
  }
}
