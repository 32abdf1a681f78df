/** The generators of a lighting power plan: size, derating, load, fuel. */
package org.setpower.plan.lighting.generator;
