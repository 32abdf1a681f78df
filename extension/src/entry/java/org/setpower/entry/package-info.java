/** The way in, compiled for Java 8: also where Java is too old it can say so. */
package org.setpower.entry;
