/** Writes a declared file into an office, and reads and fills it there. */
package org.setpower.templates.uno;
