package org.setpower.plan.batteryday;

import java.time.LocalDate;
import java.util.List;
import org.setpower.plan.batteryday.simulation.AirTemperature;
import org.setpower.plan.batteryday.simulation.DaySpec;
import org.setpower.plan.batteryday.typed.ChargeAtCall;

/**
 * A date: when and where work is, and how cold.
 *
 * @param location the places, in their order
 * @param call hours after the midnight that begins the date
 * @param wrap the last one
 * @param until the next call; infinite if there is none
 * @param shelf °C; NaN: as cold as outdoors
 * @param atCall how full the batteries are
 */
record DayFrame(
    LocalDate date,
    String location,
    double call,
    double wrap,
    double until,
    AirTemperature air,
    double shelf,
    List<DaySpec.Pause> breaks,
    ChargeAtCall atCall) {}
