/** The power budget of a line producer: a cost report, options and scenarios beside it. */
package org.setpower.templates.budget;
