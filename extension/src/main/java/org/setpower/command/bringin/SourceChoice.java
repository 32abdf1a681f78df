package org.setpower.command.bringin;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.awt.XListBox;
import com.sun.star.frame.XStorable;
import com.sun.star.lang.XComponent;
import com.sun.star.lang.XInitialization;
import com.sun.star.ui.dialogs.TemplateDescription;
import com.sun.star.ui.dialogs.XFilePicker3;
import com.sun.star.ui.dialogs.XFilterManager;
import com.sun.star.uno.Exception;
import java.util.ArrayList;
import java.util.List;
import org.setpower.command.CommandContext;
import org.setpower.command.FileStore;
import org.setpower.command.plan.PlanFile;
import org.setpower.plan.transfer.TransferWay;
import org.setpower.ui.Dialog;
import org.setpower.ui.Form;
import org.setpower.uno.Uno;

/** Asks from which file to bring in, and how. */
final class SourceChoice {
  private static final int WIDTH = 260;
  private static final int LIST = 70;

  private final CommandContext desk;
  private final PlanFile target;
  private final List<Candidate> candidates = new ArrayList<>();

  /**
   * A file to choose.
   *
   * @param document null where it is not open
   */
  private record Candidate(String label, XComponent document, String url) {}

  /**
   * What was chosen.
   *
   * @param document null where it is not open
   */
  record Chosen(XComponent document, String url, boolean onlyShort, boolean daysOfUse) {
    SourceFile open(CommandContext desk, PlanFile target) throws Exception {
      return document == null
          ? SourceFile.open(desk, url, target)
          : SourceFile.of(document, target);
    }
  }

  SourceChoice(CommandContext desk, PlanFile target) throws Exception {
    this.desk = desk;
    this.target = target;
    for (XComponent document : SourceFile.openFor(desk, target)) {
      try (SourceFile file = SourceFile.of(document, target)) {
        candidates.add(
            new Candidate(say("{} – {}, open", file.name(), file.title()), document, ""));
      } catch (org.setpower.command.message.UserMessageException otherVersion) {
        candidates.add(new Candidate(SourceFile.title(document), document, ""));
      }
    }
    String folder = folder();
    for (TransferWay way : TransferWay.into(target.model())) {
      for (String file : BringIn.files(target.book(), way)) {
        String url = folder + encoded(file);
        boolean isOpen = candidates.stream().anyMatch(c -> c.label.startsWith(file + " – "));
        if (!folder.isEmpty() && !isOpen && new FileStore(desk).exists(url)) {
          candidates.add(new Candidate(say("{} – brought in before", file), null, url));
        }
      }
    }
    candidates.add(new Candidate(say("Another file…"), null, ""));
  }

  /** The folder of the document with a slash; empty where it has none. */
  private String folder() {
    String location = Uno.as(XStorable.class, desk.document()).getLocation();
    return location != null && location.startsWith("file:")
        ? location.replaceFirst("/[^/]*$", "/")
        : "";
  }

  private static String encoded(String file) throws Exception {
    try {
      return new java.net.URI(null, null, "/" + file, null).toASCIIString().substring(1);
    } catch (java.net.URISyntaxException e) {
      return file;
    }
  }

  /** Asks; null where nothing was chosen. */
  Chosen ask() throws Exception {
    boolean hasStock = TransferWay.into(target.model()).stream().anyMatch(TransferWay::hasStock);
    int height = 18 + LIST + 3 * Dialog.GAP + Dialog.LINE + (hasStock ? 2 * Dialog.LINE + 6 : 0);
    try (Dialog dialog = new Dialog(desk, BringIn.TITLE, WIDTH, height)) {
      Form form = dialog.form();
      form.label(Dialog.GAP, Dialog.GAP, dialog.inside(), 10, "~From");
      form.add(
          "ListBox",
          "list",
          Dialog.GAP,
          18,
          dialog.inside(),
          LIST,
          Uno.property(
              "StringItemList", candidates.stream().map(Candidate::label).toArray(String[]::new)),
          Uno.property("SelectedItems", new short[] {0}));
      Object onlyShort = null;
      Object days = null;
      if (hasStock) {
        int top = 18 + LIST + Dialog.GAP;
        onlyShort = form.check("short", top, "Only what is ~short", false);
        days =
            form.check(
                "days", top + Dialog.LINE, "~Days of use as Out and Back of new rows", false);
      }
      int bottom = Dialog.buttonsAt(height);
      dialog.end(WIDTH - 2 * Dialog.GAP - 140, bottom, 70, "C~ompare…", true, true);
      dialog.end(WIDTH - Dialog.GAP - 70, bottom, 70, "~Cancel", false, false);
      if (!dialog.show()) {
        return null;
      }
      int chosen = Uno.as(XListBox.class, dialog.part("list")).getSelectedItemPos();
      if (chosen < 0) {
        return null;
      }
      Candidate candidate = candidates.get(chosen);
      boolean isOther = candidate.document == null && candidate.url.isEmpty();
      String url = isOther ? pick() : candidate.url;
      return isOther && url.isEmpty()
          ? null
          : new Chosen(
              candidate.document,
              url,
              onlyShort != null && Form.isTicked(onlyShort),
              days != null && Form.isTicked(days));
    }
  }

  private String pick() throws Exception {
    XFilePicker3 picker = desk.service(XFilePicker3.class, "com.sun.star.ui.dialogs.FilePicker");
    Uno.as(XInitialization.class, picker)
        .initialize(new Object[] {TemplateDescription.FILEOPEN_SIMPLE});
    Uno.as(XFilterManager.class, picker).appendFilter("ODS/XLSX", "*.ods;*.xlsx;*.fods");
    picker.setTitle(say(BringIn.TITLE));
    if (!folder().isEmpty()) {
      picker.setDisplayDirectory(folder());
    }
    return picker.execute() == 1 && picker.getFiles().length > 0 ? picker.getFiles()[0] : "";
  }
}
