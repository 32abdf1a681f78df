/** What a file and its example from the scenario are declared as. */
package org.setpower.templates.example;
