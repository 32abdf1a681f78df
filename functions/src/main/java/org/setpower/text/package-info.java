/**
 * Texts in other languages: of functions, plans, sheets and commands. The English text is the key.
 */
package org.setpower.text;
