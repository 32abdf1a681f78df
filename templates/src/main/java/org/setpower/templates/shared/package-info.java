/** Sheets and tables that several files have. */
package org.setpower.templates.shared;
