package org.setpower.command.export;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;

class PlainPackageTest {
  private static final String HEAD =
      "<?xml version=\"1.0\"?><office:document-content xmlns:office=\"o\" xmlns:table=\"t\""
          + " xmlns:text=\"x\" xmlns:draw=\"d\" xmlns:xlink=\"l\">";
  private static final String FOOT = "</office:document-content>";

  private final Map<String, String> before = new LinkedHashMap<>();

  private Map<String, String> plain(String sheets, String... wanted) throws Exception {
    before.put("content.xml", HEAD + sheets + FOOT);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream out = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, String> entry : before.entrySet()) {
        out.putNextEntry(new ZipEntry(entry.getKey()));
        out.write(entry.getValue().getBytes(UTF_8));
      }
    }
    Map<String, String> after = new LinkedHashMap<>();
    byte[] plain =
        new PlainPackage(Set.of(wanted), range -> List.of(range, "06:30", "a < b"))
            .of(bytes.toByteArray());
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(plain))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        after.put(entry.getName(), new String(in.readAllBytes(), UTF_8));
      }
    }
    return after;
  }

  private static String sheet(String name, String inside) {
    return "<table:table table:name=\"" + name + "\">" + inside + "</table:table>";
  }

  private static String row(String more, String... values) {
    StringBuilder row = new StringBuilder("<table:table-row" + more + ">");
    for (String value : values) {
      row.append("<table:table-cell><text:p>" + value + "</text:p></table:table-cell>");
    }
    return row + "</table:table-row>";
  }

  private static String chart(String name, String ranges) {
    return "<draw:object draw:notify-on-update-of-ranges=\""
        + ranges
        + "\" xlink:href=\"./"
        + name
        + "\"/><draw:image xlink:href=\"./ObjectReplacements/"
        + name
        + "\"/>";
  }

  @Test
  void sheets_that_are_not_wanted_are_left_out_whatever_they_are_called() throws Exception {
    String content =
        plain(
                sheet("Löhne", row("", "secret"))
                    + sheet("R&amp;D", row("", "secret"))
                    + sheet("Offer & more".replace("&", "&amp;"), row("", "offer"))
                    + sheet("Größe", row("", "size")),
                "Offer & more",
                "Größe")
            .get("content.xml");
    assertThat(content).contains("offer", "size", "Größe").doesNotContain("secret", "Löhne");
  }

  @Test
  void hidden_rows_and_columns_are_blank() throws Exception {
    String content =
        plain(
                sheet(
                    "A",
                    "<table:table-column/><table:table-column table:visibility=\"collapse\"/>"
                        + "<table:table-column table:number-columns-repeated=\"2\"/>"
                        + row("", "one", "secret", "three")
                        + row(" table:visibility=\"filter\"", "secret")
                        + row(" table:visibility=\"collapse\"", "secret")
                        + "<table:table-row><table:table-cell"
                        + " table:number-columns-repeated=\"4\"><text:p>same</text:p>"
                        + "</table:table-cell></table:table-row>"),
                "A")
            .get("content.xml");
    assertThat(content).contains("one", "three").doesNotContain("secret");
    String cell = "<table:table-cell table:number-columns-repeated=\"%s\">%s</table:table-cell>";
    assertThat(content)
        .contains(
            cell.formatted(1, "<text:p>same</text:p>")
                + "<table:table-cell table:number-columns-repeated=\"1\"/>"
                + cell.formatted(2, "<text:p>same</text:p>"));
  }

  @Test
  void charts_of_cells_that_go_keep_figures_of_their_own_and_others_follow_the_cells()
      throws Exception {
    for (String name : new String[] {"near", "far", "gone"}) {
      before.put(name + "/content.xml", "<chart:chart xlink:href=\"..\">");
      before.put("ObjectReplacements/" + name, "picture");
    }
    before.put(
        "META-INF/manifest.xml",
        "<manifest:file-entry manifest:full-path=\"gone/\"/>"
            + "<manifest:file-entry manifest:full-path=\"gone/content.xml\"/>"
            + "<manifest:file-entry manifest:full-path=\"near/\"/>");
    Map<String, String> after =
        plain(
            sheet(
                    "My sheet",
                    chart("near", "'My sheet'.A1:'My sheet'.A2")
                        + chart("far", "Data.A1:Data.A2")
                        + row("", "1"))
                + sheet("Data", chart("gone", "Data.A1:Data.A2") + row("", "2")),
            "My sheet");
    assertThat(after.get("near/content.xml")).contains("href=\"..\"");
    assertThat(after.get("far/content.xml")).contains("href=\".\"");
    assertThat(after).doesNotContainKeys("gone/content.xml", "ObjectReplacements/gone");
    assertThat(after).containsKeys("ObjectReplacements/near", "ObjectReplacements/far");
    assertThat(after.get("META-INF/manifest.xml")).contains("near/").doesNotContain("gone");
    assertThat(after.get("content.xml")).contains("'My sheet'.A1");
    assertThat(after.get("content.xml")).doesNotContain("Data");
  }

  @Test
  void labels_of_times_which_are_stored_empty_are_what_the_cells_show() throws Exception {
    String row = "<table:table-row><table:table-cell office:value-type=\"string\">";
    String value = "<table:table-cell><text:p>7</text:p></table:table-cell></table:table-row>";
    before.put(
        "far/content.xml",
        "<chart:categories table:cell-range-address=\"&apos;R&amp;D&apos;.A2:&apos;R&amp;D&apos;.A4\"/>"
            + "<table:table-header-rows>"
            + row
            + "<text:p/></table:table-cell></table:table-row></table:table-header-rows>"
            + "<table:table-rows>"
            + row
            + "<text:p>name</text:p></table:table-cell>"
            + value
            + (row + "<text:p/></table:table-cell>" + value).repeat(2)
            + "</table:table-rows>");
    String chart = plain(sheet("A", chart("far", "B.A1:B.A2")), "A").get("far/content.xml");
    assertThat(chart)
        .contains("<table:table-header-rows>" + row + "<text:p/>")
        .contains(row + "<text:p>name</text:p>")
        .contains(row + "<text:p>06:30</text:p>", row + "<text:p>a &lt; b</text:p>");
  }

  @Test
  void a_document_that_declares_what_is_elsewhere_is_refused() {
    for (String content :
        new String[] {
          "<!DOCTYPE a [<!ENTITY e SYSTEM \"file:///etc/hostname\">]><a>&e;</a>",
          "<![CDATA[x]]>",
          "<a b=c>",
          "<a b"
        }) {
      assertThatThrownBy(() -> plain(content))
          .as(content)
          .hasMessageContaining("could not open its own copy");
    }
  }
}
