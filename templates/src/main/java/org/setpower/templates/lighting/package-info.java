/** The lighting power plan of gaffer, best boy and generator operator. */
package org.setpower.templates.lighting;
