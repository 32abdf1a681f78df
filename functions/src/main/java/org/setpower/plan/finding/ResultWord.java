package org.setpower.plan.finding;

import org.setpower.base.TextEnum;

/**
 * A word that only results have. Nobody types it, so a sheet shows it in its own language; typed
 * words are the same in all.
 */
public interface ResultWord extends TextEnum {}
