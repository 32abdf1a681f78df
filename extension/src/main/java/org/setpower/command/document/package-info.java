/** A spreadsheet document as commands see it: cells, formulas, calls of our functions. */
package org.setpower.command.document;
