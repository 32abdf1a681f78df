package org.setpower.entry;

import com.sun.star.awt.MessageBoxType;
import com.sun.star.awt.XMessageBox;
import com.sun.star.awt.XMessageBoxFactory;
import com.sun.star.awt.XWindowPeer;
import com.sun.star.frame.XDesktop;
import com.sun.star.frame.XFrame;
import com.sun.star.lang.XComponent;
import com.sun.star.lang.XServiceInfo;
import com.sun.star.lang.XSingleComponentFactory;
import com.sun.star.lang.XTypeProvider;
import com.sun.star.lib.uno.helper.ComponentBase;
import com.sun.star.task.XJobExecutor;
import com.sun.star.uno.RuntimeException;
import com.sun.star.uno.Type;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;

/**
 * Stands in where the office runs a Java that cannot load the rest of the extension: a cell shows
 * in words what is missing, and a command of the menu says it in a window.
 */
final class UnsupportedJavaStub extends ComponentBase implements XSingleComponentFactory {
  private static final String NEEDED = "17";
  private static final String ADD_IN = "org.setpower.addin.FunctionsAddIn";
  private static final String COMMANDS = "org.setpower.command.menu.CommandRegistry";

  /** A cell that asks for it must be in error, so that the sheets show their notice. */
  private static final String MUST_FAIL = "sheetVersion";

  private final String implementation;
  private EntryMessages said = EntryMessages.english();

  UnsupportedJavaStub(String implementation) {
    this.implementation = implementation;
  }

  /** What a cell shows. */
  private String inCell() {
    return said.say("Java {} is needed, here is {}", NEEDED, here());
  }

  /** What a window says. */
  private String inWindow() {
    return said.say(
        "Set Power Sheets needs Java {} or newer; LibreOffice uses Java {}. Install a newer one"
            + " (the packages of your system, or openjdk.org), choose it under Tools - Options -"
            + " LibreOffice - Advanced, and restart LibreOffice.",
        NEEDED,
        here());
  }

  private static String here() {
    return System.getProperty("java.version");
  }

  @Override
  public Object createInstanceWithContext(XComponentContext context) {
    said = EntryMessages.of(context);
    if (implementation.equals(COMMANDS)) {
      return new Telling(context);
    }
    return implementation.equals(ADD_IN) ? functions() : null;
  }

  @Override
  public Object createInstanceWithArgumentsAndContext(
      Object[] arguments, XComponentContext context) {
    return createInstanceWithContext(context);
  }

  private Object functions() {
    try {
      Class<?>[] types = {
        Class.forName("org.setpower.XFunctions"), XServiceInfo.class, XTypeProvider.class
      };
      return Proxy.newProxyInstance(
          UnsupportedJavaStub.class.getClassLoader(), types, this::answer);
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(e);
    }
  }

  private Object answer(Object self, Method method, Object... arguments) throws Throwable {
    Class<?> asked = method.getDeclaringClass();
    if (asked == XTypeProvider.class) {
      return method.getName().equals("getTypes") ? types(self) : new byte[0];
    }
    if (asked == XServiceInfo.class) {
      return method.invoke(new Info(), arguments);
    }
    if (asked == Object.class) {
      return ofEveryObject(self, method, arguments);
    }
    if (method.getName().equals(MUST_FAIL)) {
      throw new RuntimeException(inWindow(), self);
    }
    return inCell();
  }

  private static Type[] types(Object self) {
    Class<?>[] all = self.getClass().getInterfaces();
    Type[] types = new Type[all.length];
    for (int i = 0; i < types.length; i++) {
      types[i] = new Type(all[i]);
    }
    return types;
  }

  private Object ofEveryObject(Object self, Method method, Object[] arguments)
      throws IllegalAccessException, InvocationTargetException {
    if (method.getName().equals("equals")) {
      return self == arguments[0];
    }
    return method.invoke(this, arguments);
  }

  private static final class Info implements XServiceInfo {
    private static final String SERVICE = "org.setpower.Functions";

    @Override
    public String getImplementationName() {
      return ADD_IN;
    }

    @Override
    public boolean supportsService(String name) {
      return SERVICE.equals(name);
    }

    @Override
    public String[] getSupportedServiceNames() {
      return new String[] {SERVICE};
    }
  }

  /** A command that tells what is missing. */
  private final class Telling extends ComponentBase implements XJobExecutor {
    private final XComponentContext context;

    Telling(XComponentContext context) {
      this.context = context;
    }

    private <T> T service(Class<T> type, String name) throws com.sun.star.uno.Exception {
      return UnoRuntime.queryInterface(
          type, context.getServiceManager().createInstanceWithContext(name, context));
    }

    @Override
    public void trigger(String words) {
      try {
        XFrame frame = service(XDesktop.class, "com.sun.star.frame.Desktop").getCurrentFrame();
        XMessageBox box =
            service(XMessageBoxFactory.class, "com.sun.star.awt.Toolkit")
                .createMessageBox(
                    UnoRuntime.queryInterface(XWindowPeer.class, frame.getContainerWindow()),
                    MessageBoxType.WARNINGBOX,
                    1,
                    "Set Power",
                    inWindow());
        box.execute();
        UnoRuntime.queryInterface(XComponent.class, box).dispose();
      } catch (com.sun.star.uno.Exception e) {
        throw new RuntimeException(inWindow(), this);
      }
    }
  }
}
