/** The functions: one class a group, with the parameters that only its trade takes. */
package org.setpower.registry.groups;
