package org.setpower.command.print;

import com.sun.star.beans.PropertyValue;
import com.sun.star.document.XEmbeddedObjectSupplier;
import com.sun.star.frame.DispatchDescriptor;
import com.sun.star.frame.XController;
import com.sun.star.frame.XDispatch;
import com.sun.star.frame.XDispatchProvider;
import com.sun.star.frame.XDispatchProviderInterceptor;
import com.sun.star.frame.XFrame;
import com.sun.star.frame.XInterceptorInfo;
import com.sun.star.frame.XStatusListener;
import com.sun.star.lang.XComponent;
import com.sun.star.lib.uno.helper.WeakBase;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetView;
import com.sun.star.table.XTableCharts;
import com.sun.star.table.XTableChartsSupplier;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.URL;
import com.sun.star.util.XModifiable;
import org.setpower.command.CommandContext;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.message.FallibleAction;
import org.setpower.uno.Uno;

/** Sets print ranges to filled rows before a window prints, previews or exports to PDF. */
final class PrintInterceptor extends WeakBase
    implements XDispatchProviderInterceptor, XInterceptorInfo {
  private static final String[] PRINTING = {
    ".uno:Print",
    ".uno:PrintDefault",
    ".uno:PrintPreview",
    ".uno:ExportToPDF",
    ".uno:ExportDirectToPDF",
    ".uno:SendMailDocAsPDF",
  };

  private final XComponentContext context;
  private final XFrame frame;
  private XDispatchProvider slave;
  private XDispatchProvider master;

  /** Null while nothing is hidden. */
  private BlankRows hidden;

  /** Null while none is set aside. */
  private OtherPapers others;

  PrintInterceptor(XComponentContext context, XFrame frame) {
    this.context = context;
    this.frame = frame;
  }

  /** The office asks for these addresses only. */
  @Override
  public String[] getInterceptedURLs() {
    return PRINTING.clone();
  }

  @Override
  public XDispatch queryDispatch(URL url, String target, int flags) {
    XDispatch printing = slave == null ? null : slave.queryDispatch(url, target, flags);
    return printing == null ? null : new Prepared(printing);
  }

  @Override
  public XDispatch[] queryDispatches(DispatchDescriptor[] requests) {
    XDispatch[] answers = new XDispatch[requests.length];
    for (int i = 0; i < answers.length; i++) {
      DispatchDescriptor request = requests[i];
      answers[i] = queryDispatch(request.FeatureURL, request.FrameName, request.SearchFlags);
    }
    return answers;
  }

  /** What cannot be prepared is printed as it is: each paper names rows that it does not show. */
  private void prepare() {
    try {
      XController view = frame.getController();
      if (Uno.as(XSpreadsheetView.class, view) == null) {
        return; // the preview itself: it is fitted already
      }
      putBack();
      CommandContext desk = new CommandContext(context, Uno.as(XComponent.class, view.getModel()));
      if (!desk.book().isFromTemplate()) {
        return;
      }
      XModifiable document = Uno.as(XModifiable.class, desk.document());
      if (desk.mayWrite()) {
        hidden = BlankRows.of(desk.book());
        keepingUnmodified(document, () -> FitPrintCommand.fit(desk, hidden));
      }
      keepingUnmodified(document, () -> others = OtherPapers.setAside(desk.book(), view));
    } catch (com.sun.star.uno.Exception | RuntimeException fault) {
      System.err.println(fault);
    }
  }

  private boolean isPreview() {
    XController view = frame.getController();
    return view != null && Uno.as(XSpreadsheetView.class, view) == null;
  }

  /** Puts back what a preview hides; an export to PDF is saved too, and keeps it hidden. */
  void saving() {
    if (isPreview()) {
      putBack();
    }
  }

  /** Shows what was hidden and set aside for printing, of a preview when it is closed. */
  void putBack() {
    BlankRows rows = hidden;
    hidden = null;
    OtherPapers papers = others;
    others = null;
    try {
      if (rows != null) {
        keepingUnmodified(Uno.as(XModifiable.class, rows.document()), rows::show);
      }
      if (papers != null) {
        keepingUnmodified(Uno.as(XModifiable.class, papers.document()), papers::putBack);
      }
    } catch (com.sun.star.uno.Exception | RuntimeException fault) {
      System.err.println(fault);
    }
  }

  /** Who only prints is not asked to save. */
  private static void keepingUnmodified(XModifiable document, FallibleAction setting)
      throws com.sun.star.uno.Exception {
    boolean wasModified = document.isModified();
    setting.run();
    if (!wasModified) {
      unmodify(document);
    }
  }

  /** A document counts as modified while a chart of it does, and drawing a sheet modifies them. */
  private static void unmodify(XModifiable document) throws com.sun.star.uno.Exception {
    document.setModified(false);
    if (!document.isModified()) {
      return;
    }
    for (XSpreadsheet sheet : new CalcDocument(Uno.as(XComponent.class, document)).all()) {
      XTableCharts charts = Uno.as(XTableChartsSupplier.class, sheet).getCharts();
      for (String name : charts.getElementNames()) {
        Object chart = charts.getByName(name);
        Uno.as(XModifiable.class, Uno.as(XEmbeddedObjectSupplier.class, chart).getEmbeddedObject())
            .setModified(false);
      }
    }
  }

  @Override
  public XDispatchProvider getSlaveDispatchProvider() {
    return slave;
  }

  @Override
  public void setSlaveDispatchProvider(XDispatchProvider next) {
    slave = next;
  }

  @Override
  public XDispatchProvider getMasterDispatchProvider() {
    return master;
  }

  @Override
  public void setMasterDispatchProvider(XDispatchProvider previous) {
    master = previous;
  }

  /** Prints after print ranges are set. */
  private final class Prepared extends WeakBase implements XDispatch {
    private final XDispatch printing;

    Prepared(XDispatch printing) {
      this.printing = printing;
    }

    @Override
    public void dispatch(URL url, PropertyValue[] arguments) {
      XController view = frame.getController();
      XModifiable document = view == null ? null : Uno.as(XModifiable.class, view.getModel());
      try {
        if (document == null) {
          print(url, arguments);
        } else {
          keepingUnmodified(document, () -> print(url, arguments));
        }
      } catch (com.sun.star.uno.Exception fault) {
        System.err.println(fault);
      }
    }

    private void print(URL url, PropertyValue[] arguments) {
      prepare();
      try {
        printing.dispatch(url, arguments);
      } finally {
        if (!isPreview()) {
          putBack();
        }
      }
    }

    @Override
    public void addStatusListener(XStatusListener listener, URL url) {
      printing.addStatusListener(listener, url);
    }

    @Override
    public void removeStatusListener(XStatusListener listener, URL url) {
      printing.removeStatusListener(listener, url);
    }
  }
}
