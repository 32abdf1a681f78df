package org.setpower.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.star.deployment.PackageInformationProvider;
import com.sun.star.lang.XComponent;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.command.issues.ListIssuesCommand;
import org.setpower.office.Office;

/** Documents from later versions, other extensions with our names, files that are damaged. */
class CompatibilityIT {
  private static final String DROP = "=ORG.SETPOWER.FUNCTIONS.CABLEDROP(\"2.5 mm²\";25;16;\"DC\")";
  private static final String LATER = "=ORG.SETPOWER.FUNCTIONS.CABLEWEIGHT(\"2.5 mm²\";25)";

  @Test
  @ExtendWith(SharedOffice.class)
  void a_function_of_a_later_version_is_kept_and_said_to_be_unknown(
      Office office, @TempDir Path folder) throws IOException {
    TestSheet sheet = TestSheet.firstOf(office.newSpreadsheet());
    sheet.put("A1", DROP).put("A2", LATER);
    String looked = CommandDriver.command(office, sheet.document(), "look");
    assertThat(looked).contains("error: 1;");
    assertThat(TestSheet.named(sheet.document(), ListIssuesCommand.SHEET).shown("D5"))
        .contains("CABLEWEIGHT", "newer");
    assertThat(CommandDriver.command(office, sheet.document(), "explain", "cell", "A2"))
        .contains("CABLEWEIGHT", "newer");
    Path file = folder.resolve("later.ods");
    office.store(sheet.document(), "calc8", file);
    sheet.close();
    TestSheet again = TestSheet.firstOf(office.open(file));
    assertThat(again.cell("A2").getFormula()).isEqualToIgnoringCase(LATER);
    assertThat(again.shown("A2")).isEqualTo("#NAME?");
    assertThat(again.number("A1")).isPositive();
    again.close();
  }

  /** Only a configuration, as far as it needs none of the other's code. */
  private static Path otherExtension(Path folder) throws IOException {
    Path file = folder.resolve("other.oxt");
    try (OutputStream out = Files.newOutputStream(file);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      entry(
          zip,
          "META-INF/manifest.xml",
          """
          <manifest:manifest xmlns:manifest="http://openoffice.org/2001/manifest">
          <manifest:file-entry manifest:full-path="CalcAddIns.xcu"
            manifest:media-type="application/vnd.sun.star.configuration-data"/>
          </manifest:manifest>\
          """);
      entry(
          zip,
          "description.xml",
          """
          <description xmlns="http://openoffice.org/extensions/description/2006">
          <identifier value="org.example.other"/><version value="1"/></description>\
          """);
      entry(
          zip,
          "CalcAddIns.xcu",
          """
          <oor:component-data xmlns:oor="http://openoffice.org/2001/registry"
            oor:name="CalcAddIns" oor:package="org.openoffice.Office"><node oor:name="AddInInfo">
          <node oor:name="org.example.Other" oor:op="replace"><node oor:name="AddInFunctions">
          <node oor:name="cableDrop" oor:op="replace">
            <prop oor:name="DisplayName"><value xml:lang="en-US">CABLE.DROP</value></prop>
            <prop oor:name="Description"><value xml:lang="en-US">Not ours</value></prop>
            <prop oor:name="Category"><value>Add-In</value></prop>
          </node></node></node></node></oor:component-data>\
          """);
    }
    return file;
  }

  private static void entry(ZipOutputStream zip, String name, String text) throws IOException {
    zip.putNextEntry(new ZipEntry(name));
    zip.write(
        ("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + text).getBytes(StandardCharsets.UTF_8));
    zip.closeEntry();
  }

  @Test
  void another_extension_with_a_name_of_ours_does_not_touch_our_documents(@TempDir Path folder)
      throws IOException {
    try (Office office = Office.start(otherExtension(folder), SharedOffice.OXT)) {
      TestSheet sheet = TestSheet.firstOf(office.newSpreadsheet());
      sheet.put("A1", DROP);
      assertThat(sheet.number("A1")).isPositive();
      Path file = folder.resolve("ours.ods");
      office.store(sheet.document(), "calc8", file);
      sheet.close();
      TestSheet again = TestSheet.firstOf(office.open(file));
      again.calculate();
      assertThat(again.number("A1")).isPositive();
      assertThat(again.cell("A1").getFormula()).isEqualTo(DROP);
    }
  }

  /** The template in British English and, where it is drawn, in American. */
  private static List<Path> english(Path extension) throws IOException {
    try (Stream<Path> files = Files.walk(extension.resolve("templates"))) {
      return files
          .filter(f -> f.endsWith("lighting-power-plan.ots"))
          .filter(f -> f.toString().contains("/templates/en"))
          .toList();
    }
  }

  @Test
  void a_damaged_template_is_told_and_the_others_open() throws IOException {
    try (Office office = Office.start(SharedOffice.OXT)) {
      String place =
          PackageInformationProvider.get(office.context())
              .getPackageLocation("org.setpower.sheets");
      Path root = Path.of(System.getProperty("setpower.office.root", "/"));
      Path inside = root.resolve(Path.of(URI.create(place)).toString().substring(1));
      String title = "lighting-power-plan";
      for (Path template : english(inside)) {
        byte[] whole = Files.readAllBytes(template);
        Files.write(template, java.util.Arrays.copyOf(whole, whole.length / 2));
      }
      assertThatThrownBy(() -> CommandDriver.command(office, null, "new", "title", title))
          .hasMessageContaining("Cannot open “" + title + "”")
          .hasMessageContaining("Reinstall the extension");
      assertThat(CommandDriver.command(office, null, "new", "title", "Power budget"))
          .isEqualTo("Power budget");
      XComponent example =
          office.open(Path.of("target/sheets/examples/lighting-power-plan-example.ods"));
      assertThatThrownBy(() -> CommandDriver.command(office, example, "mend"))
          .hasMessageContaining("Cannot open “" + title + "”")
          .hasMessageContaining("Reinstall the extension");
    }
  }
}
