/**
 * Packs in the air: what a traveller may carry, how many, and how the rest goes as cargo.
 *
 * <p>Sources: ICAO Technical Instructions (Doc 9284) and the IATA Dangerous Goods Regulations that
 * follow them, 49 CFR 175.10 and FAA PackSafe, each as dated rows with authority, edition and
 * basis. Leaves out: what a single airline or state adds, lithium metal, vehicles, road and sea,
 * package masses. Where no rule could be confirmed, the answer is "ask the airline".
 */
package org.setpower.flight;
