package org.setpower.command.bringin;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.document.UpdateDocMode;
import com.sun.star.frame.XComponentLoader;
import com.sun.star.frame.XModel;
import com.sun.star.lang.XComponent;
import com.sun.star.uno.Exception;
import com.sun.star.util.XCloseable;
import java.math.BigDecimal;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setpower.command.CommandContext;
import org.setpower.command.FileStore;
import org.setpower.command.document.JobCell;
import org.setpower.command.message.CommandMessages;
import org.setpower.command.message.UserMessageException;
import org.setpower.command.plan.PlanFile;
import org.setpower.plan.common.Messages;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.quote.QuotePlan;
import org.setpower.plan.quote.QuoteResults;
import org.setpower.plan.transfer.TransferSource;
import org.setpower.plan.transfer.TransferWay;
import org.setpower.uno.Uno;

/** The file that is read. Nobody sees it, and nothing is written to it. */
final class SourceFile implements AutoCloseable {
  private final XComponent document;
  private final boolean isLoaded;
  private final String name;
  private final PlanFile plan;

  private SourceFile(XComponent document, boolean isLoaded, String name, PlanFile plan) {
    this.document = document;
    this.isLoaded = isLoaded;
    this.name = name;
    this.plan = plan;
  }

  /**
   * Opens a file, or takes the document in which it is open with what is not saved yet.
   *
   * @param target the plan into which it is brought
   */
  static SourceFile open(CommandContext desk, String url, PlanFile target) throws Exception {
    Optional<XComponent> shown =
        documents(desk).stream().filter(d -> isAt(url(d), url)).findFirst();
    if (shown.isPresent()) {
      return of(shown.get(), target);
    }
    XComponent loaded = load(desk, url);
    try {
      return new SourceFile(loaded, true, name(url), read(loaded, name(url), target));
    } catch (Exception | RuntimeException refused) {
      Uno.as(XCloseable.class, loaded).close(true);
      throw refused;
    }
  }

  /** An open document. */
  static SourceFile of(XComponent document, PlanFile target) throws Exception {
    String name = title(document);
    if (Uno.as(XModel.class, document).equals(Uno.as(XModel.class, target.book().document()))) {
      throw new UserMessageException(
          "“{}” is this file itself. Choose the file to bring in from. Nothing was changed.", name);
    }
    return new SourceFile(document, false, name, read(document, name, target));
  }

  /** The open documents that may be brought into a plan, but for its own. */
  static List<XComponent> openFor(CommandContext desk, PlanFile target) throws Exception {
    List<XComponent> fitting = new ArrayList<>();
    for (XComponent document : documents(desk)) {
      CommandContext there = new CommandContext(desk.context(), document);
      if (there.hasBook()
          && !Uno.as(XModel.class, document)
              .equals(Uno.as(XModel.class, target.book().document()))) {
        Optional<PlanFile> plan = PlanFile.of(there.book());
        if (plan.flatMap(p -> TransferWay.between(p.model(), target.model())).isPresent()) {
          fitting.add(document);
        }
      }
    }
    return fitting;
  }

  private static List<XComponent> documents(CommandContext desk) throws Exception {
    List<XComponent> documents = new ArrayList<>();
    var all = desk.desktop().getComponents().createEnumeration();
    while (all.hasMoreElements()) {
      XComponent document = Uno.as(XComponent.class, all.nextElement());
      if (Uno.as(XModel.class, document) != null) {
        documents.add(document);
      }
    }
    return documents;
  }

  private static String url(XComponent document) {
    return Uno.as(XModel.class, document).getURL();
  }

  private static boolean isAt(String one, String other) {
    return !one.isEmpty() && decoded(one).equals(decoded(other));
  }

  private static String decoded(String url) {
    return URLDecoder.decode(url.replace("+", "%2B"), StandardCharsets.UTF_8);
  }

  /** The name of a file without its folder. */
  static String name(String url) {
    return decoded(url).replaceFirst(".*/", "");
  }

  /** What an open document is called: its file, or its title where it has none. */
  static String title(XComponent document) {
    String file = name(url(document));
    if (!file.isEmpty()) {
      return file;
    }
    var titled = Uno.as(com.sun.star.frame.XTitle.class, document);
    return titled == null ? "" : titled.getTitle();
  }

  private static XComponent load(CommandContext desk, String url) throws Exception {
    boolean isThere;
    try {
      isThere = new FileStore(desk).exists(url);
    } catch (Exception | com.sun.star.uno.RuntimeException e) {
      isThere = false;
    }
    if (!isThere) {
      throw new UserMessageException(
          "“{}” is not there any more. Choose the file to bring in from. Nothing was changed.",
          name(url));
    }
    XComponent document;
    try {
      document =
          Uno.as(XComponentLoader.class, desk.desktop())
              .loadComponentFromURL(
                  url,
                  "_blank",
                  0,
                  Uno.properties(
                      Uno.property("Hidden", true),
                      Uno.property("ReadOnly", true),
                      Uno.property("UpdateDocMode", UpdateDocMode.NO_UPDATE)));
    } catch (Exception | com.sun.star.uno.RuntimeException e) {
      throw unreadable(url).because(e);
    }
    if (document == null) {
      throw unreadable(url);
    }
    return document;
  }

  private static UserMessageException unreadable(String url) {
    return new UserMessageException(
        "“{}” could not be opened: it is damaged, may not be read, or has a password. If it has a"
            + " password, open it first, then bring it in. Nothing was changed.",
        name(url));
  }

  private static PlanFile read(XComponent document, String name, PlanFile target) throws Exception {
    CommandContext there = new CommandContext(null, document);
    PlanFile plan = there.hasBook() ? PlanFile.of(there.book()).orElse(null) : null;
    if (plan == null) {
      throw new UserMessageException(
          "“{}” is no file of Set Power, or a copy with values only. Choose a file that Set Power"
              + " calculates. Nothing was changed.",
          name);
    }
    if (TransferWay.between(plan.model(), target.model()).isEmpty()) {
      throw new UserMessageException(
          "“{}” is of another kind ({}). This file takes: {}. Choose one of these. Nothing was"
              + " changed.",
          name,
          title(plan),
          String.join(
              ", ",
              TransferWay.into(target.model()).stream()
                  .map(w -> TransferWords.title(w.from()))
                  .toList()));
    }
    if (!plan.isOfThisLayout()) {
      throw new UserMessageException(
          "“{}” has the layout of another version of Set Power. Open it, use Set Power ▸ Update"
              + " file…, save the new file, and bring that in. Nothing was changed.",
          name);
    }
    return plan;
  }

  private static String title(PlanFile plan) {
    return TransferWords.title(plan.model());
  }

  private static Messages words() {
    return Messages.in(CommandMessages.language());
  }

  String name() {
    return name;
  }

  /** The title of its plan, in the language of the office. */
  String title() {
    return title(plan);
  }

  String revision() throws Exception {
    return JobCell.REVISION.in(plan.book());
  }

  TransferWay way(PlanFile target) {
    return TransferWay.between(plan.model(), target.model()).orElseThrow();
  }

  /** What it holds; refuses a plan that cannot be calculated, and a quote that may not go out. */
  TransferSource source() throws Exception {
    TransferSource source = TransferSource.of(plan.model(), plan.read());
    if (!source.result().faults().isEmpty()) {
      throw new UserMessageException(
          "“{}” cannot be read: {} Nothing was changed.",
          name,
          sentences(source.result().faults()));
    }
    if (plan.model() == QuotePlan.MODEL
        && !Boolean.TRUE.equals(source.result().rows(QuoteResults.SUMMARY).get(0).mayIssue())) {
      List<Finding> why =
          source.result().rows(QuoteResults.LETTER).stream()
              .flatMap(l -> l.reasons().stream())
              .toList();
      throw new UserMessageException(
          "The quote “{}” is not to be issued: {} Correct it there, then bring it in. Nothing was"
              + " changed.",
          name,
          sentences(why));
    }
    return source;
  }

  private static String sentences(List<Finding> findings) {
    String language = CommandMessages.language();
    return words().sentences(findings, java.util.Locale.forLanguageTag(language));
  }

  /** What is said of it above the differences. */
  String head(TransferSource source, List<String> withheld) throws Exception {
    StringBuilder head = new StringBuilder();
    String revision = revision();
    head.append(
        revision.isEmpty()
            ? say("From “{}” ({}).", name, title())
            : say("From “{}” ({}, revision {}).", name, title(), revision));
    if (source.stops() > 0) {
      head.append(' ')
          .append(
              CommandMessages.plural(
                  "It has {} open stop. Correct it there.",
                  "It has {} open stops. Correct them there.",
                  source.stops()));
    }
    if (!withheld.isEmpty()) {
      head.append(' ')
          .append(
              say("Rows that are a stop or unfit there are not brought in: {}.", some(withheld)));
    }
    if (plan.model() == QuotePlan.MODEL) {
      head.append(notBroughtIn(source));
    }
    return head.toString();
  }

  /** What a quote says that is no line of a budget: when it is paid, and what came back late. */
  private static String notBroughtIn(TransferSource quote) {
    QuoteResults.Summary sums = quote.result().rows(QuoteResults.SUMMARY).get(0);
    String terms = quote.result().rows(QuoteResults.LETTER).get(0).paymentTerms();
    String due =
        isSome(sums.downPayment()) || terms != null
            ? " "
                + say("The lines come without Due: fill it in there, by deposit and payment terms.")
            : "";
    return isSome(sums.lateFees())
        ? due + " " + say("Late fees are not brought in: they are on the return statement.")
        : due;
  }

  private static boolean isSome(BigDecimal amount) {
    return amount != null && amount.signum() > 0;
  }

  private static String some(List<String> names) {
    int most = 8;
    return String.join("; ", names.subList(0, Math.min(most, names.size())))
        + (names.size() > most ? "; …" : "");
  }

  @Override
  public void close() throws Exception {
    if (isLoaded) {
      Uno.as(XCloseable.class, document).close(true);
    }
  }
}
