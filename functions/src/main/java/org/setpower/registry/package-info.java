/**
 * The functions as sheets know them: one constant per function, shared words for their parameters,
 * and how values of a sheet are read. Imports the rooms; no room imports it.
 */
package org.setpower.registry;
