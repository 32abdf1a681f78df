package org.setpower.generator;

/** A page before it is framed. */
record Page(String title, String body) {}
