package org.setpower.generator;

/** A page before it is framed. */
record HandbookPage(String title, String body) {}
