package org.setpower.bank;

/**
 * What happens to a pack of a bank.
 *
 * @param hours into the job
 * @param pack its row, from 1; 0 for the device
 * @param amps from the pack just after; negative if it is being charged
 * @param what in words
 */
public record BankEvent(double hours, int pack, double amps, String what) {}
