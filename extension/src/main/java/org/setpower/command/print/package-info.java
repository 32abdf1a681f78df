/** Print ranges, pages and paper sizes. */
package org.setpower.command.print;
