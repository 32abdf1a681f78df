/** The open issues of a document: errors and rows to stop or to check. */
package org.setpower.command.issues;
