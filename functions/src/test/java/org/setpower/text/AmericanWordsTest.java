package org.setpower.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.setpower.text.MessageCatalog.Speaker;

/**
 * What an American reads has no British word; typed words in quotes and names of functions stay.
 */
class AmericanWordsTest {
  /** Spellings by common dictionaries; trade words by common practice on American sets. */
  private static final Pattern BRITISH =
      Pattern.compile(
          "(?i)\\b(?:(?:sub-)?hire[ds]?|earth(?:ed|ing)?|mains|petrol|vat|licence|lorry"
              + "|(?:kilo|milli)?metres?|litres?|centres?|colou?red|colours?|grey|aluminium"
              + "|travellers?|cancelled|refuelling|labelled|catalogue|programme|socket outlets?"
              + "|\\w+(?:isation|yse[ds]?))\\b|\\bRCDs?\\b(?!.*(?:IEC|GFCI))(?<!IEC.{1,200})");

  private static final Pattern QUOTED = Pattern.compile("\"[^\"]*\"|\\b[A-Z]+\\.[A-Z]+\\b");

  @ParameterizedTest
  @EnumSource(Speaker.class)
  void no_british_word_is_left(Speaker speaker) {
    MessageCatalog american = MessageCatalog.in("en-US", speaker);
    List<String> left =
        MessageCatalog.in("de", speaker).translated().stream()
            .map(american::of)
            .filter(t -> BRITISH.matcher(QUOTED.matcher(t).replaceAll("")).find())
            .toList();
    assertThat(left).isEmpty();
  }
}
