/** How cells look and what may be typed into them. */
package org.setpower.templates.spec;
