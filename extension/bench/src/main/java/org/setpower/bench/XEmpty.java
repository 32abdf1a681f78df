package org.setpower.bench;

import com.sun.star.lib.uno.typeinfo.MethodTypeInfo;
import com.sun.star.lib.uno.typeinfo.TypeInfo;
import com.sun.star.uno.XInterface;

/** The Java side of types.idl: as many arguments as CABLE.DROP and CABLE.ENDVOLTS, and no more. */
public interface XEmpty extends XInterface {
  /** What the office's bridge asks for. */
  TypeInfo[] UNOTYPEINFO = {
    new MethodTypeInfo("emptyDrop", 0, 0), new MethodTypeInfo("emptyEndVolts", 1, 0)
  };

  /** Gives 0, or a column of 0 as long as {@code c}. */
  Object emptyDrop(Object a, Object b, Object c, Object d, Object e, Object f, Object g);

  /** Gives 0. */
  Object emptyEndVolts(
      Object a, Object b, Object c, Object d, Object e, Object f, Object g, Object h);
}
