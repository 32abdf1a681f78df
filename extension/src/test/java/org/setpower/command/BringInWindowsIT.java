package org.setpower.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.awt.Key;
import com.sun.star.frame.XModel;
import com.sun.star.task.XJobExecutor;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.office.Office;
import org.setpower.uno.Uno;

/** The windows of Bring in…, with the keyboard and without eyes. */
@Tag("one-office")
class BringInWindowsIT {
  private static final Path SHEETS = Path.of("target/sheets");

  private static Office office;

  @BeforeAll
  static void start() throws IOException {
    office = Office.startWithWindows(SharedOffice.OXT);
  }

  @AfterAll
  static void end() {
    office.close();
  }

  private static ShownWindow open() throws Exception {
    return ShownWindow.open(
        office, () -> office.service(XJobExecutor.class, "org.setpower.Commands").trigger("bring"));
  }

  @Test
  void a_quote_is_chosen_compared_and_brought_in_with_the_keyboard() throws Exception {
    TestSheet quote =
        TestSheet.firstOf(office.open(SHEETS.resolve("examples/rental-quote-example.ods")));
    TestSheet lines =
        TestSheet.named(
            office.open(SHEETS.resolve("templates/en/power-budget.ots")), "Budget lines");
    try {
      Uno.as(XModel.class, lines.document()).getCurrentController().getFrame().activate();
      ShownWindow choice = open();
      assertThat(choice.walk().stream().map(ShownWindow.Part::name))
          .containsExactly("From", "Compare…", "Cancel");
      choice.press(Key.RETURN);
      ShownWindow differences = choice.followedBy();
      assertThat(differences.walk().stream().map(ShownWindow.Part::name))
          .containsExactly(
              "What is written: yes or no",
              "The chosen line in full",
              "Yes",
              "No",
              "Yes to all",
              "No to all",
              "Bring in",
              "Cancel");
      differences.press(Key.ESCAPE);
      differences.isClosed();

      ShownWindow again = open();
      again.press(Key.RETURN);
      ShownWindow list = again.followedBy();
      list.press(Key.RETURN);
      ShownWindow done = list.followedBy();
      assertThat(done.parts().stream().map(ShownWindow.Part::name))
          .anyMatch(n -> n.contains("25 rows added"));
      done.press(Key.RETURN);
      done.isClosed();
    } finally {
      lines.close();
      quote.close();
    }
  }

  /** Names that the price list lacks are asked for before the differences, and may be left. */
  @Test
  void names_that_differ_are_asked_for_before_the_differences() throws Exception {
    TestSheet plan =
        TestSheet.firstOf(office.open(SHEETS.resolve("examples/lighting-power-plan-example.ods")));
    TestSheet quote =
        TestSheet.named(
            office.open(SHEETS.resolve("examples/rental-quote-example.ods")), "Equipment");
    try {
      Uno.as(XModel.class, quote.document()).getCurrentController().getFrame().activate();
      ShownWindow choice = open();
      choice.press(Key.RETURN);
      ShownWindow names = choice.followedBy();
      assertThat(names.walk().stream().map(ShownWindow.Part::name))
          .containsExactly("Name there", "Item here", "Same item", "Continue", "Cancel");
      names.press(Key.RETURN);
      ShownWindow differences = names.followedBy();
      assertThat(differences.walk().stream().map(ShownWindow.Part::name))
          .contains("What is written: yes or no");
      differences.press(Key.ESCAPE);
      differences.isClosed();
    } finally {
      quote.close();
      plan.close();
    }
  }
}
