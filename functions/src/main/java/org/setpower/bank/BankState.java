package org.setpower.bank;

/**
 * A bank at a moment of the job.
 *
 * @param hours into the job
 * @param deviceVolts V at the device, behind the lead
 * @param amps A that the device draws
 * @param charges share of charge of each pack, in the order of their rows
 */
public record BankState(double hours, double deviceVolts, double amps, double[] charges) {}
