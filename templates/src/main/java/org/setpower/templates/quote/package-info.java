/** Template 4: the rental quote of a rental desk, from the first offer to the return. */
package org.setpower.templates.quote;
