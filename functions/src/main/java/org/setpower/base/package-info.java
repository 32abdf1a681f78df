/**
 * What every trade package needs: errors with codes, calculation steps, texts with units, reference
 * tables. Imports no other package.
 */
package org.setpower.base;
