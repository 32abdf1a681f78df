/** New files from the shipped templates. */
package org.setpower.command.newfile;
