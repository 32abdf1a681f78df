/** A distro with its outlets and its supply run, to be added to a plan in one go. */
package org.setpower.plan.lighting.distro;
