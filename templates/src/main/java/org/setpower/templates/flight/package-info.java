/** The flight packing list: which packs fly, how, with whom, and how the rest gets there. */
package org.setpower.templates.flight;
