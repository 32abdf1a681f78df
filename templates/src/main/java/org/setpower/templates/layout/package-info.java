/** Where the parts of a declared file stand: addresses, widths, pages, names. */
package org.setpower.templates.layout;
