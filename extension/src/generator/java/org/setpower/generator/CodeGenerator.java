package org.setpower.generator;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.groups.FunctionRegistry;
import org.setpower.registry.text.FunctionTexts;
import org.setpower.text.MessageCatalog;

/**
 * Writes what the office needs to know of the catalogue (IDL, adapter class, CalcAddIns.xcu), the
 * handbook and the icons.
 */
public final class CodeGenerator {
  /** The interface that the add-in implements. */
  static final String INTERFACE = "org.setpower.XFunctions";

  /** Files of the configuration with titles that users read. */
  private static final List<String> TITLED =
      List.of("Addons.xcu", "CalcWindowState.xcu", "OptionsDialog.xcu");

  /** Where the code of the extension stands that users read texts of. */
  private static final List<String> SPEAKING =
      List.of("org/setpower/command", "org/setpower/ui", "org/setpower/uno");

  /** What speaks where Java is too old, with the same words. */
  private static final String ENTRY = "../../entry/java/org/setpower/entry";

  private CodeGenerator() {}

  /**
   * Arguments: the folder to write into, the handbook's sources, the version, the drawings, whether
   * it is a release, the folder of the function reference in the repository, whether to write that
   * too ({@code -Dreference.write=true}); otherwise a test only compares it.
   */
  public static void main(String[] args) throws IOException {
    Path target = Path.of(args[0]);
    List<FunctionSpec> functions =
        FunctionRegistry.all().stream()
            .sorted(java.util.Comparator.comparing(FunctionSpec::methodName))
            .toList();
    write(target.resolve("idl/org/setpower/XFunctions.idl"), Idl.of(functions));
    write(target.resolve("java/org/setpower/addin/FunctionsAddIn.java"), AddInClass.of(functions));
    Map<String, FunctionTexts> translations = translations(args[4].equals("true"));
    write(target.resolve("CalcAddIns.xcu"), CalcAddIns.of(functions, translations));
    Path shipped = Path.of(args[3]).getParent();
    List<MessageCatalog> words =
        words(
            shipped.resolveSibling("java"),
            args[4].equals("true"),
            shipped,
            target.resolve("untranslated"));
    for (String file : TITLED) {
      String configuration = Files.readString(shipped.resolve(file));
      write(target.resolve(file), CommandTexts.titles(configuration, words));
    }
    for (String locale : MessageCatalog.files()) {
      write(
          target.resolve("texts/org/setpower/text").resolve(MessageCatalog.file(locale)),
          ShippedTexts.of(locale));
    }
    Path assembly = shipped.resolveSibling("assembly/oxt.xml");
    write(
        target.resolve("oxt.xml"),
        AssemblyDescriptor.of(Files.readString(assembly), MessageCatalog.files()));
    Icons.draw(Path.of(args[3]), target.resolve("icons"));
    writeReference(target.resolve("reference"));
    if (args[6].equals("true")) {
      writeReference(Path.of(args[5]));
    }
    for (Map.Entry<String, String> file :
        new HandbookWriter(Path.of(args[1]), args[2]).files().entrySet()) {
      write(target.resolve("handbook").resolve(file.getKey()), file.getValue());
    }
  }

  /** The function reference as Markdown; pages that are no more are deleted. */
  private static void writeReference(Path folder) throws IOException {
    Markup markdown = new Markup.Markdown();
    Set<String> written = new HashSet<>();
    for (Map.Entry<String, HandbookPage> page :
        FunctionReference.pages(markdown, Map.of(), Map.of()).entrySet()) {
      String file = page.getKey() + markdown.ending();
      written.add(file);
      write(
          folder.resolve(file),
          "<!-- Written by the build from the catalogue of functions: do not edit. -->\n"
              + page.getValue().body());
    }
    try (Stream<Path> there = Files.list(folder)) {
      for (Path file : there.toList()) {
        if (!written.contains(file.getFileName().toString())) {
          Files.delete(file);
        }
      }
    }
  }

  /** All languages; says what is not translated, and lets no release pass without it. */
  private static Map<String, FunctionTexts> translations(boolean release) {
    Map<String, FunctionTexts> translations = new LinkedHashMap<>();
    List<String> faults = new ArrayList<>();
    for (String language : MessageCatalog.LANGUAGES) {
      FunctionTexts translation = FunctionTexts.into(language);
      translations.put(language, translation);
      check("functions", language, translation.asked(), release, faults);
    }
    stopAt(faults);
    return translations;
  }

  /** The words of the commands; says what is not translated, and lets nothing pass that is none. */
  private static List<MessageCatalog> words(
      Path sources, boolean release, Path shipped, Path missing) throws IOException {
    List<MessageCatalog> all = new ArrayList<>();
    List<String> faults = new ArrayList<>();
    for (String language : MessageCatalog.LANGUAGES) {
      MessageCatalog words = MessageCatalog.in(language, MessageCatalog.Speaker.COMMANDS);
      for (String code : SPEAKING) {
        CommandTexts.ask(sources.resolve(code), words);
      }
      CommandTexts.ask(sources.resolve(ENTRY), words);
      for (String file : TITLED) {
        CommandTexts.titles(Files.readString(shipped.resolve(file)), List.of(words));
      }
      all.add(words);
      write(
          missing.resolve(MessageCatalog.file(language)),
          words.missing().stream()
              .map(text -> MessageCatalog.entry(MessageCatalog.Speaker.COMMANDS, text))
              .collect(Collectors.joining("\n")));
      check("commands", language, words, release, faults);
    }
    stopAt(faults);
    return all;
  }

  /** Says what is missing, a fault in a release; what nobody says is a fault always. */
  private static void check(
      String where, String language, MessageCatalog words, boolean release, List<String> faults) {
    Set<String> missing = words.missing();
    if (!missing.isEmpty()) {
      String gap =
          "%s, %s.po: %d of %d texts are missing: %s"
              .formatted(
                  where,
                  language,
                  missing.size(),
                  words.asked().size(),
                  String.join(" | ", missing));
      System.err.println(gap);
      if (release) {
        faults.add(gap);
      }
    }
    if (!words.orphaned().isEmpty()) {
      faults.add(where + ", " + language + ".po: nothing says " + words.orphaned());
    }
  }

  private static void stopAt(List<String> faults) {
    if (!faults.isEmpty()) {
      throw new IllegalStateException(String.join("; ", faults));
    }
  }

  /** Writes only what changed, so that an unchanged catalogue compiles nothing again. */
  private static void write(Path file, String text) throws IOException {
    Files.createDirectories(file.getParent());
    if (!Files.exists(file) || !Files.readString(file).equals(text)) {
      Files.writeString(file, text, StandardCharsets.UTF_8);
    }
  }
}
