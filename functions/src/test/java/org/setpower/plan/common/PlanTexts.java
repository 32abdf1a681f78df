package org.setpower.plan.common;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.setpower.base.TextEnum;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.ResultWord;
import org.setpower.registry.groups.FunctionRegistry;

/** All texts of all plans that users read and that are translated. */
final class PlanTexts {
  private PlanTexts() {}

  /** The plans that a function carries into a sheet: nobody reads the others yet. */
  static List<PlanModel> models() {
    return FunctionRegistry.all().stream()
        .flatMap(f -> f.plan().stream())
        .sorted(Comparator.comparing(PlanModel::name))
        .toList();
  }

  /** The patterns of all sentences. */
  static Set<String> sentences() {
    EnglishMessages english = new EnglishMessages();
    Set<String> all = new TreeSet<>();
    Stream.concat(
            Arrays.stream(CommonFinding.values()),
            models().stream().flatMap(m -> m.findings().stream()))
        .map(FindingKey::key)
        .forEach(k -> all.add(english.pattern(k)));
    return all;
  }

  /** Sentences, headings, rules and helps. */
  static Set<String> all() {
    Set<String> all = new TreeSet<>(sentences());
    Messages asked = new Asked(all);
    for (PlanModel model : models()) {
      all.addAll(model.phrases());
      for (InputTable<?> table : model.inputs()) {
        all.add(table.heading());
        for (InputColumn column : table.columns()) {
          column.heading(asked);
          all.addAll(List.of(column.help(), column.blank()));
        }
      }
      for (ResultTable<?> table : model.results()) {
        all.add(table.heading());
        for (ResultColumn column : table.columns()) {
          all.addAll(List.of(column.heading(), column.rule()));
          all.addAll(words(column));
        }
      }
    }
    all.add(Issues.MORE);
    all.remove("");
    return all;
  }

  /** The words that a result shows in the reader's language. */
  private static List<String> words(ResultColumn column) {
    boolean isTranslated = column.translated() || ResultWord.class.isAssignableFrom(column.type());
    if (isTranslated && column.type() == Boolean.class) {
      return List.of("yes", "no");
    }
    if (!isTranslated || !column.type().isEnum()) {
      return List.of();
    }
    return Arrays.stream(column.type().getEnumConstants()).map(c -> ((TextEnum) c).word()).toList();
  }

  /** Notes what it is asked for. */
  private record Asked(Set<String> texts) implements Messages {
    @Override
    public String text(String english) {
      texts.add(english);
      return english;
    }

    @Override
    public String phrase(Phrase phrase, Locale locale) {
      throw new UnsupportedOperationException();
    }

    @Override
    public String sentence(Finding finding, Locale locale) {
      throw new UnsupportedOperationException();
    }
  }
}
