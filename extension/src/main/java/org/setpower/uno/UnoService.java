package org.setpower.uno;

import com.sun.star.lang.XServiceInfo;
import com.sun.star.lib.uno.helper.WeakBase;

/** An object that the office makes by the name of the one service it answers for. */
public abstract class UnoService extends WeakBase implements XServiceInfo {
  private final String service;

  public UnoService(String service) {
    this.service = service;
  }

  @Override
  public final String getImplementationName() {
    return getClass().getName();
  }

  @Override
  public final boolean supportsService(String name) {
    return service.equals(name);
  }

  @Override
  public final String[] getSupportedServiceNames() {
    return new String[] {service};
  }
}
