/** The vocabulary in which a file is declared: sheets, tables, cells, formulas, charts. */
package org.setpower.templates.spec;
