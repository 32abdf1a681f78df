/** The tree of a distribution: sources, breakers, outlets, cable runs, and the places they make. */
package org.setpower.plan.lighting.network;
