package org.setpower.templates.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;
import static org.setpower.templates.plan.RentalQuoteIT.day;
import static org.setpower.templates.plan.RentalQuoteIT.row;

import com.sun.star.document.XDocumentPropertiesSupplier;
import com.sun.star.frame.XDesktop;
import com.sun.star.lang.Locale;
import com.sun.star.uno.UnoRuntime;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Enumeration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.command.CommandDriver;
import org.setpower.command.export.PdfText;
import org.setpower.office.Office;
import org.setpower.templates.quote.RentalQuote;
import org.setpower.text.MessageCatalog;
import org.setpower.uno.Uno;

/** What leaves the house is the client's pages and nothing else of the desk's document. */
@ExtendWith(SharedOffice.class)
class ClientQuoteExportIT {
  /** What the client must not see: the other house, its rate, cost, margin, stock, the desk. */
  private static final String[] SECRETS = {
    "secret",
    "41.37",
    "82.74",
    "7431",
    "Results_",
    "Top_",
    "Internal",
    "Equipment",
    "Picking",
    "Margin on", // pages have pageMargins
    "Sub-hire",
    "SETPOWER",
    "PLAN",
    "Rows kept back"
  };

  private static PlanSheet filled(Office office) throws Exception {
    // a document of its own: exporting and the properties below change more than cells
    PlanSheet own = new PlanSheet(office, RentalQuoteIT.TEMPLATE, new RentalQuote().workbook());
    return filled(RentalQuoteIT.filled(own));
  }

  private static PlanSheet filled(PlanSheet book) throws Exception {
    book.rows(
        "items",
        row("item", "panel", "section", "lights", "qty", 2.0, "agreedDays", 4.0),
        row(
            "item",
            "haze machine",
            "section",
            "lights",
            "qty",
            1.0,
            "rate",
            45.0,
            "agreedDays",
            2.0,
            "subFrom",
            "secret house",
            "subRate",
            41.37,
            "subDays",
            2.0));
    book.rows(
        "stock",
        row(
            "item",
            "panel",
            "owned",
            7431.0,
            "dayRate",
            60.0,
            "value",
            500.0,
            "weight",
            1.0,
            "caution",
            "secret caution",
            "origin",
            "FR"));
    book.rows("booked", row("item", "secret item", "qty", 1.0, "from", 1.0e4, "to", 1.0e4));
    book.rows("picked", row("line", 1.0, "item", "panel", "serials", "secret serial"));
    book.rows("terms", row("paragraph", "Late return: by the rule of the hire."));
    book.type("order.discount", 0.1).type("order.waiver", 0.08).type("order.downPayment", 0.3);
    var properties =
        UnoRuntime.queryInterface(XDocumentPropertiesSupplier.class, book.document())
            .getDocumentProperties();
    properties.setAuthor("secret author");
    properties.setDescription("secret words");
    properties.getUserDefinedProperties().addProperty("secretproperty", (short) 0, "secret");
    return book;
  }

  private static Path export(Office office, PlanSheet book) throws Exception {
    Path to = office.newFolder().resolve("quote");
    CommandDriver.command(
        office, book.document(), "client", "to", office.address(to), "again", "yes");
    return to;
  }

  private static Map<String, String> entries(Path file) throws IOException {
    Map<String, String> entries = new TreeMap<>();
    try (ZipFile zip = new ZipFile(file.toFile())) {
      for (Enumeration<? extends ZipEntry> all = zip.entries(); all.hasMoreElements(); ) {
        ZipEntry entry = all.nextElement();
        entries.put(
            entry.getName(),
            new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8));
      }
    }
    return entries;
  }

  /** 2 × 60 × 4 + 45 × 2 = 570, less 57; waiver 41.04; 20 % of 513 = 102.60; total 656.64. */
  @Test
  void the_files_have_the_page_and_nothing_of_the_desk(Office office) throws Exception {
    try (PlanSheet book = filled(office)) {
      assertThat(book.single("summary.mayIssue")).isEqualTo("yes");
      Path to = export(office, book);
      String pdf = PdfText.of(Path.of(to + ".pdf"));
      assertThat(pdf)
          .contains("our house.name", "production X9", "quay 1", "Q1", "panel", "haze machine")
          .contains("480.00", "90.00", "570.00", "-57.00", "41.04", "102.60", "656.64", "196.99")
          .contains("Order discount 10 % of 570.00", "Late return", "Accepted")
          // the label takes two lines
          .containsPattern("Damage waiver 8 % of 513\\.00, not[^a-z]+insurance")
          .doesNotContain(SECRETS)
          .doesNotContain("###", "#NAME", "Err:");
      assertThat(PdfText.properties(Path.of(to + ".pdf"))).doesNotContain("secret", "Author");
      Map<String, String> xlsx = entries(Path.of(to + ".xlsx"));
      xlsx.forEach((name, text) -> assertThat(text).as(name).doesNotContain(SECRETS));
      assertThat(xlsx.keySet().stream().filter(n -> n.startsWith("xl/worksheets/sheet")))
          .hasSize(1);
      assertThat(xlsx.keySet())
          .noneMatch(n -> n.contains("comments") || n.contains("externalLink"))
          .noneMatch(n -> n.contains("drawing") || n.contains("media") || n.contains("custom"));
      String sheet = xlsx.get("xl/worksheets/sheet1.xml");
      assertThat(sheet).doesNotContain("<f", "dataValidation", "conditionalFormatting");
      assertThat(sheet).doesNotContain("hidden=\"true\"", "hidden=\"1\"", "<hyperlink");
      assertThat(xlsx.get("xl/workbook.xml")).doesNotContain("state=\"hidden\"", "veryHidden");
      assertThat(
              Stream.of(xlsx.get("xl/workbook.xml").split("<definedName "))
                  .skip(1)
                  .filter(n -> !n.contains("Print_Area")))
          .isEmpty();
      assertThat(xlsx.get("docProps/core.xml"))
          .doesNotContainPattern("(creator|lastModifiedBy)>[^<]");
    }
  }

  @Test
  void a_quote_that_may_not_be_issued_is_not_written(Office office) throws Exception {
    try (PlanSheet book = filled(office)) {
      book.rows("items", row("item", "panel", "qty", 2.0), row("item", "panel", "qty", 2.5));
      Path folder = office.newFolder();
      assertThatThrownBy(
              () ->
                  CommandDriver.command(
                      office,
                      book.document(),
                      "client",
                      "to",
                      office.address(folder.resolve("quote"))))
          .hasMessageContaining("Not to be issued: row 2")
          .hasMessageContaining("Nothing was written");
      try (Stream<Path> files = Files.list(folder)) {
        assertThat(files).isEmpty();
      }
    }
  }

  /** Language of the sheet, locale of the document, currency. */
  private static final String[][] HOUSES = {
    {"en", "en-GB", "GBP", "8,398.08"},
    {"en", "en-US", "USD", "8,398.08"},
    {"en", "en-US", "JPY", "8,398"},
    {"en", "en-GB", "EUR", "8,398.08"},
    {"de", "de-DE", "EUR", "8.398,08"},
    {"fr", "fr-FR", "EUR", "8\\h398,08"},
    {"es", "es-ES", "EUR", "8.398,08"},
    {"de", "de-DE", "JPY", "8.398"}
  };

  @TestFactory
  @Tag("one-office")
  Stream<DynamicTest> the_page_is_whole_in_languages_and_currencies(Office office) {
    return Stream.of(HOUSES)
        .map(
            h ->
                DynamicTest.dynamicTest(
                    String.join(" ", h), () -> assertWhole(office, h[0], h[1], h[2], h[3])));
  }

  /**
   * 30 × 60 × 4 + 45 × 2 = 7290, less 729; waiver 8 % of 6561, untaxed: 524.88; tax 1312.20; total
   * 8398.08.
   */
  private static void assertWhole(
      Office office, String language, String locale, String currency, String total)
      throws Exception {
    Path template = Path.of("target/sheets/templates/" + language + "/rental-quote.ots");
    assumeTrue(Files.exists(template), "the sheets are drawn in English only");
    MessageCatalog words = MessageCatalog.in(language, MessageCatalog.Speaker.SHEETS);
    PlanSheet open = new PlanSheet(office, template, new RentalQuote().workbook(), words);
    try (PlanSheet book = filled(RentalQuoteIT.filled(open))) {
      assumeTrue(book.column("document.row").size() > 1, "drawn before the last change");
      Uno.set(book.document(), "CharLocale", locale(locale));
      book.rows(
          "items",
          row("item", "panel", "section", "lights", "qty", 30.0, "agreedDays", 4.0),
          row(
              "item",
              "haze machine",
              "section",
              "lights",
              "qty",
              1.0,
              "rate",
              45.0,
              "agreedDays",
              2.0));
      book.type("order.currency", currency);
      Path to = export(office, book);
      String page = PdfText.of(Path.of(to + ".pdf"));
      assertThat(page)
          .containsPattern("(?m)" + currency + "\\h+" + total.replace(".", "\\.") + "$")
          .contains("2027", "panel", "haze machine", "our house.bank")
          .doesNotContain("###", "#NAME", "Err:", SECRETS[0]);
      assertThat(page.split("\\f")).hasSize(1);
    }
  }

  private static Locale locale(String tag) {
    return new Locale(tag.substring(0, 2), tag.substring(3), "");
  }

  /** What was sent keeps its revision; other content needs the next one. */
  @Test
  @Tag("one-office")
  void changed_content_needs_the_next_revision(Office office) throws Exception {
    try (PlanSheet book = filled(office)) {
      String to = office.address(office.newFolder().resolve("quote"));
      book.type("order.revision", "1");
      CommandDriver.command(office, book.document(), "client", "to", to);
      assertThat(CommandDriver.command(office, book.document(), "client", "to", to))
          .contains("Written for the client");
      book.type("order.discount", 0.2);
      assertThatThrownBy(() -> CommandDriver.command(office, book.document(), "client", "to", to))
          .hasMessageContaining("other content under the same number and revision")
          .hasMessageContaining("Nothing was written");
      book.type("order.revision", "2");
      assertThat(CommandDriver.command(office, book.document(), "client", "to", to))
          .contains("Written for the client");
    }
  }

  /** Forty rows: the page is full, and what is signed stands on one page. */
  @Test
  @Tag("one-office")
  @SuppressWarnings({"unchecked", "rawtypes"})
  void what_is_signed_is_not_cut(Office office) throws Exception {
    try (PlanSheet book = filled(office)) {
      int cut = 0;
      for (int rows = 20; rows <= 44; rows += 6) {
        Map[] items = new Map[rows];
        for (int i = 0; i < rows; i++) {
          items[i] = row("item", "panel", "section", "lights", "qty", 1.0);
        }
        book.rows("items", items);
        String[] pages = PdfText.of(Path.of(export(office, book) + ".pdf")).split("\\f");
        for (String page : pages) {
          assertThat(page.contains("Charged days:")).isEqualTo(page.contains("Accepted"));
          assertThat(page.contains("Total EUR")).isEqualTo(page.contains("Signature ___"));
        }
        cut = Math.max(cut, pages.length);
      }
      assertThat(cut).isGreaterThan(1);
    }
  }

  /** 2 × 60 × 4 + 45 × 2 = 570, less 57; waiver 41; tax 103; total 657. */
  @Test
  @Tag("one-office")
  void amounts_have_the_decimals_of_their_currency(Office office) throws Exception {
    try (PlanSheet book = filled(office)) {
      book.type("order.currency", "JPY").type("order.back", day("2027-02-10"));
      assertThat(PdfText.of(Path.of(export(office, book) + ".pdf")))
          .contains("Total JPY", "657", "480")
          .doesNotContain("480.00", "657.00", "60.00");
      book.type("order.currency", "KWD");
      assertThat(PdfText.of(Path.of(export(office, book) + ".pdf")))
          .contains("Total KWD", "656.640");
    }
  }

  /**
   * What a firm fills in over the shipped example is all that leaves it: nothing of the example.
   */
  @Test
  void nothing_of_the_example_or_of_us_is_left_for_another_firm(Office office) throws Exception {
    Path example = Path.of("target/sheets/examples/rental-quote-example.ods");
    PlanSheet open = new PlanSheet(office, example, new RentalQuote().workbook());
    try (PlanSheet book = RentalQuoteIT.filled(open)) {
      book.rows("stock", row("item", "panel", "owned", 9.0, "dayRate", 60.0, "value", 500.0));
      book.rows("items", row("item", "panel", "section", "lights", "qty", 2.0));
      book.rows("picked");
      book.rows("returns");
      book.rows("terms", row("paragraph", "Our own terms."));
      book.type("client.contact", "").type("client.purchaseOrder", "").type("order.replaces", "");
      Path to = export(office, book);
      String pdf = PdfText.of(Path.of(to + ".pdf"));
      assertThat(pdf).contains("our house.name", "production X9", "Our own terms.");
      Map<String, String> files = entries(Path.of(to + ".xlsx"));
      assertThat(files).containsKeys("docProps/core.xml", "docProps/app.xml", "xl/styles.xml");
      files.put("pdf", pdf + PdfText.properties(Path.of(to + ".pdf")));
      Set<String> ofExample = new TreeSet<>(List.of("set power", "setpower", "tube", "Salt Road"));
      for (String cell : List.of("house", "client", "Production", "order.number")) {
        ofExample.addAll(typedInExample(cell));
      }
      files.forEach(
          (name, text) ->
              ofExample.forEach(
                  word -> assertThat(text).as(name).doesNotContainIgnoringCase(word)));
    }
  }

  /** What the example's file types into cells that begin so. */
  private static List<String> typedInExample(String cell) throws IOException {
    String file = "/org/setpower/templates/example/quote/cells.csv";
    try (InputStream in = RentalQuote.class.getResourceAsStream(file)) {
      List<String> typed =
          new String(in.readAllBytes(), StandardCharsets.UTF_8)
              .lines()
              .filter(l -> l.startsWith(cell))
              .map(l -> l.substring(l.indexOf(',') + 1).replace("\"", ""))
              .filter(t -> t.length() > 3)
              .toList();
      assertThat(typed).isNotEmpty();
      return typed;
    }
  }

  /** A picture as a camera or a program writes it: with words beside its dots. */
  private static Path picture(Path folder) throws IOException {
    ByteArrayOutputStream plain = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(300, 100, BufferedImage.TYPE_INT_RGB), "png", plain);
    byte[] words = "tEXtComment\0secret place".getBytes(StandardCharsets.ISO_8859_1);
    CRC32 sum = new CRC32();
    sum.update(words);
    ByteBuffer all = ByteBuffer.allocate(plain.size() + words.length + 8);
    int header = 33; // signature and IHDR
    all.put(plain.toByteArray(), 0, header);
    all.putInt(words.length - 4).put(words).putInt((int) sum.getValue());
    all.put(plain.toByteArray(), header, plain.size() - header);
    return Files.write(folder.resolve("secret-logo.png"), all.array());
  }

  /**
   * The logo of the settings stands on a new quote and goes out as dots, without its file's words.
   */
  @Test
  @Tag("one-office")
  void the_logo_goes_out_without_what_its_file_says(Office office) throws Exception {
    Path folder = Files.createTempDirectory("logo");
    String logo = office.copyIn(picture(folder));
    CommandDriver.command(office, null, "settings", "HOUSE_LOGO", logo);
    try {
      CommandDriver.command(office, null, "new", "title", "Rental quote");
    } finally {
      CommandDriver.command(office, null, "settings", "HOUSE_LOGO", "");
    }
    var desktop = office.service(XDesktop.class, "com.sun.star.frame.Desktop");
    PlanSheet open = new PlanSheet(desktop.getCurrentComponent(), new RentalQuote().workbook());
    try (PlanSheet book = filled(RentalQuoteIT.filled(open))) {
      Map<String, String> xlsx = entries(Path.of(export(office, book) + ".xlsx"));
      assertThat(xlsx.keySet()).anyMatch(n -> n.startsWith("xl/media/"));
      xlsx.forEach((name, text) -> assertThat(text).as(name).doesNotContain("secret"));
    }
    CommandDriver.command(office, null, "settings", "HOUSE_LOGO", folder + "/none.png");
    try {
      assertThatThrownBy(() -> CommandDriver.command(office, null, "new", "title", "Rental quote"))
          .hasMessageContaining("none.png” cannot be read");
      Office.discard(desktop.getCurrentComponent());
    } finally {
      CommandDriver.command(office, null, "settings", "HOUSE_LOGO", "");
    }
  }
}
