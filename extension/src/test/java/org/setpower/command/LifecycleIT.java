package org.setpower.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.beans.NamedValue;
import com.sun.star.deployment.ExtensionManager;
import com.sun.star.deployment.XPackage;
import com.sun.star.task.XInteractionApprove;
import com.sun.star.task.XInteractionHandler;
import com.sun.star.ucb.XCommandEnvironment;
import com.sun.star.ucb.XProgressHandler;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.office.Office;

/** Installing, updating, removing and installing again, in an office of its own. */
class LifecycleIT {
  private static final String IDENTIFIER = "org.setpower.sheets";
  private static final String DROP = "=ORG.SETPOWER.FUNCTIONS.CABLEDROP(\"2.5 mm²\";25;A1;\"DC\")";

  @TempDir private Path folder;
  private Office office;
  private Path file;

  @BeforeEach
  void installAnOlderVersion() throws IOException {
    office = Office.start(older());
    file = folder.resolve("plan.ods");
  }

  @AfterEach
  void end() {
    office.close();
  }

  /** The packed extension with a lower version. */
  private Path older() throws IOException {
    Path older =
        Files.copy(
            SharedOffice.OXT, folder.resolve("older.oxt"), StandardCopyOption.REPLACE_EXISTING);
    try (FileSystem zip = FileSystems.newFileSystem(older)) {
      Path description = zip.getPath("description.xml");
      String text = Files.readString(description);
      String lower = text.replaceFirst("<version value=\"[^\"]*\"", "<version value=\"0.0.1\"");
      assertThat(lower).isNotEqualTo(text);
      Files.writeString(description, lower);
    }
    return older;
  }

  private String version() throws com.sun.star.uno.Exception {
    XPackage installed =
        ExtensionManager.get(office.context()).getDeployedExtension("user", IDENTIFIER, "", null);
    return installed.getVersion();
  }

  private void storeADocument() throws IOException {
    TestSheet sheet = TestSheet.firstOf(office.newSpreadsheet());
    sheet.put("A1", 16).put("B1", DROP).put("B2", "=B1*2");
    assertThat(sheet.number("B1")).isPositive();
    office.store(sheet.document(), "calc8", file);
    sheet.close();
  }

  private void assertAlive(double amps) throws IOException {
    TestSheet sheet = TestSheet.firstOf(office.open(file));
    double before = sheet.number("B1");
    sheet.put("A1", 2 * amps);
    assertThat(sheet.error("B1")).isZero();
    assertThat(sheet.number("B1")).isEqualTo(2 * before);
    assertThat(sheet.number("B2")).isEqualTo(4 * before);
    assertThat(CommandDriver.command(office, sheet.document(), "explain", "cell", "B1"))
        .contains("CABLE.DROP");
    sheet.close();
  }

  @Test
  void documents_live_through_update_removal_and_return() throws Exception {
    assertThat(version()).isEqualTo("0.0.1");
    storeADocument();

    office.install(SharedOffice.OXT);
    assertThat(version()).isNotEqualTo("0.0.1");
    assertAlive(16);

    office.remove(IDENTIFIER);
    TestSheet without = TestSheet.firstOf(office.open(file));
    without.calculate();
    assertThat(without.shown("B1")).isEqualTo("#NAME?");
    assertThat(without.cell("B1").getFormula())
        .containsIgnoringCase("setpower.functions.cabledrop");
    office.store(without.document(), "calc8", file);
    without.close();

    office.install(SharedOffice.OXT);
    assertAlive(16);
  }

  @Test
  void a_document_that_is_open_during_an_update_lives_after_the_restart() throws Exception {
    TestSheet open = TestSheet.firstOf(office.newSpreadsheet());
    open.put("A1", 16).put("B1", DROP).put("B2", "=B1*2");
    ExtensionManager.get(office.context())
        .addExtension(
            office.copyIn(SharedOffice.OXT), new NamedValue[0], "user", null, new YesToAll());
    open.put("A1", 32);
    open.calculate();
    assertThat(open.cell("B1").getFormula()).isEqualTo(DROP);
    office.store(open.document(), "calc8", file);
    open.close();
    office.restart();
    assertThat(version()).isNotEqualTo("0.0.1");
    assertAlive(32);
  }

  /** Approves what the office asks when an older version is replaced. */
  private static final class YesToAll implements XCommandEnvironment {
    @Override
    public XInteractionHandler getInteractionHandler() {
      return request -> {
        for (Object answer : request.getContinuations()) {
          XInteractionApprove approve =
              UnoRuntime.queryInterface(XInteractionApprove.class, answer);
          if (approve != null) {
            approve.select();
          }
        }
      };
    }

    @Override
    public XProgressHandler getProgressHandler() {
      return null;
    }
  }
}
