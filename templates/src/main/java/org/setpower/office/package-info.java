/**
 * The one launcher of an office, for whoever needs one: the builder of the sheets, the tests, the
 * demo. An office gets a private, fresh profile, an ordinary user, a free port and a time limit,
 * and is gone when it is closed.
 */
package org.setpower.office;
