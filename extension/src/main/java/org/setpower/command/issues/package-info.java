/** The list of errors, stops and looks of a document. */
package org.setpower.command.issues;
