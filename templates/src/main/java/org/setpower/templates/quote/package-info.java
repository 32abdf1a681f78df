/** The rental quote. */
package org.setpower.templates.quote;
