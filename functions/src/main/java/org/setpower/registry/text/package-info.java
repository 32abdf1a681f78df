/** The texts of the function wizard in other languages. */
package org.setpower.registry.text;
