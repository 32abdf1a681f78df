/** Copies of a document with values in the place of our functions. */
package org.setpower.command.export;
