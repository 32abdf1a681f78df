/** The battery travel list. */
package org.setpower.templates.travel;
