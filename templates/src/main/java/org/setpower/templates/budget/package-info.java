/** Template 3: the power budget of a line producer, line by line and way beside way. */
package org.setpower.templates.budget;
