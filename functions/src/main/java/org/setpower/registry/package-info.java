/**
 * The functions as sheets call them: one constant a function, shared parameters, and how values of
 * a sheet are read. Imports the trade packages; none of them imports it.
 */
package org.setpower.registry;
