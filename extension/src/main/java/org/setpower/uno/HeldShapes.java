package org.setpower.uno;

import com.sun.star.drawing.XShape;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Set;

/**
 * Shapes that Java has asked for, held as long as the office runs. LibreOffice 26.8 keeps a drawn
 * object alive for the sake of a reference to its shape, also when its document is gone; where that
 * reference is the last one and Java's collector releases it then, the office ends, because the
 * items of the object have no pool any more. Nothing tells Java to release a reference earlier.
 */
public final class HeldShapes {
  private static final Set<XShape> ALL =
      Collections.synchronizedSet(Collections.newSetFromMap(new IdentityHashMap<>()));

  private HeldShapes() {}

  /** A shape, such as one that a drawing page gives or a document makes; from now on held. */
  public static XShape hold(Object shape) {
    XShape held = Uno.as(XShape.class, shape);
    ALL.add(held);
    return held;
  }
}
