package org.setpower.command.menu;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.frame.FeatureStateEvent;
import com.sun.star.frame.XComponentLoader;
import com.sun.star.frame.XController;
import com.sun.star.frame.XDispatch;
import com.sun.star.frame.XDispatchProvider;
import com.sun.star.frame.XModel;
import com.sun.star.frame.XStatusListener;
import com.sun.star.lang.EventObject;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.URL;
import com.sun.star.util.XURLTransformer;
import com.sun.star.view.XSelectionSupplier;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.office.Office;
import org.setpower.uno.Uno;

/** What menus and toolbars are told: whether a command makes sense now. */
@ExtendWith(SharedOffice.class)
@Tag("one-office")
class EnabledIT {
  private Office office;
  private TestSheet sheet;

  @BeforeEach
  void open(Office shared) throws IOException {
    office = shared;
    sheet = TestSheet.firstOf(office.newSpreadsheet());
    sheet
        .put("A1", "=ORG.SETPOWER.FUNCTIONS.CABLEDROP(\"2.5 mm²\";25;16;\"DC\")")
        .put("A2", "=1+1");
  }

  @AfterEach
  void close() {
    sheet.close();
  }

  /** Hears what a menu entry hears. */
  private static final class Entry implements XStatusListener {
    private final BlockingQueue<Boolean> told = new LinkedBlockingQueue<>();

    @Override
    public void statusChanged(FeatureStateEvent event) {
      told.add(event.IsEnabled);
    }

    @Override
    public void disposing(EventObject event) {
      // the document closes
    }

    /** Waits until the last thing told is this. */
    void becomes(boolean enabled) throws InterruptedException {
      Boolean last;
      do {
        last = told.poll(20, TimeUnit.SECONDS);
        assertThat(last).as("the entry is told that it is " + enabled).isNotNull();
      } while (last != enabled);
    }
  }

  private XController controller(TestSheet of) {
    return UnoRuntime.queryInterface(XModel.class, of.document()).getCurrentController();
  }

  private void select(String address) throws Exception {
    UnoRuntime.queryInterface(XSelectionSupplier.class, controller(sheet))
        .select(sheet.range(address));
  }

  private URL url(String command) throws Exception {
    URL[] url = {new URL()};
    url[0].Complete = "org.setpower:" + command;
    office.service(XURLTransformer.class, "com.sun.star.util.URLTransformer").parseStrict(url);
    return url[0];
  }

  private Entry entry(TestSheet of, String command) throws Exception {
    URL url = url(command);
    XDispatch dispatch =
        UnoRuntime.queryInterface(XDispatchProvider.class, controller(of).getFrame())
            .queryDispatch(url, "_self", 0);
    assertThat(dispatch).as(command).isNotNull();
    Entry entry = new Entry();
    dispatch.addStatusListener(entry, url);
    return entry;
  }

  @Test
  void how_this_number_came_about_follows_the_selection() throws Exception {
    select("A2");
    Entry entry = entry(sheet, "explain");
    entry.becomes(false);
    select("A1");
    entry.becomes(true);
    select("B7");
    entry.becomes(false);
  }

  @Test
  void rows_are_added_only_in_tables_of_sheets_of_ours() throws Exception {
    entry(sheet, "add").becomes(false);
    entry(sheet, "mend").becomes(false);
    TestSheet plan =
        TestSheet.named(
            office.open(Path.of("target/sheets/examples/lighting-power-plan-example.ods")),
            "Loads");
    try {
      controller(plan).getFrame().activate();
      UnoRuntime.queryInterface(XSelectionSupplier.class, controller(plan))
          .select(plan.range("B9"));
      entry(plan, "add").becomes(true);
      entry(plan, "remove").becomes(true);
      entry(plan, "mend").becomes(true);
    } finally {
      plan.close();
    }
  }

  /** An entry is grey in a plain document and in one example, and not in the other. */
  private void helpsIn(String command, String yes, String no) throws Exception {
    entry(sheet, command).becomes(false);
    for (String name : List.of(no, yes)) {
      Path example = Path.of("target/sheets/examples/" + name + "-example.ods");
      TestSheet first = TestSheet.firstOf(office.open(example));
      try {
        entry(first, command).becomes(name.equals(yes));
      } finally {
        first.close();
      }
    }
  }

  @Test
  void a_budget_is_approved_in_a_power_budget_only() throws Exception {
    helpsIn("approve", "power-budget", "battery-register");
  }

  @Test
  void rows_are_brought_into_files_that_take_some_only() throws Exception {
    helpsIn("bring", "rental-quote", "battery-register");
  }

  @Test
  void a_distro_is_added_to_a_lighting_plan_only() throws Exception {
    helpsIn("distro", "lighting-power-plan", "battery-register");
  }

  @Test
  void batteries_are_marked_as_inspected_in_a_register_only() throws Exception {
    helpsIn("inspect", "battery-register", "lighting-power-plan");
  }

  @Test
  void a_document_that_may_only_be_read_is_copied_but_not_written_to(@TempDir Path folder)
      throws Exception {
    entry(sheet, "look").becomes(true);
    Path file = folder.resolve("plan.ods");
    office.store(sheet.document(), "calc8", file);
    TestSheet locked =
        TestSheet.firstOf(
            office
                .service(XComponentLoader.class, "com.sun.star.frame.Desktop")
                .loadComponentFromURL(
                    office.copyIn(file),
                    "_blank",
                    0,
                    Uno.properties(Uno.property("ReadOnly", true))));
    try {
      entry(locked, "copy").becomes(true);
      entry(locked, "look").becomes(false);
    } finally {
      locked.close();
    }
  }

  @Test
  void an_address_that_is_no_command_has_nothing_behind_it() throws Exception {
    assertThat(
            UnoRuntime.queryInterface(XDispatchProvider.class, controller(sheet).getFrame())
                .queryDispatch(url("nonsense"), "_self", 0))
        .isNull();
  }
}
