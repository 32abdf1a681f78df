/**
 * One battery pack: what it holds, how long it lasts, what the cold takes. Answers for Li-ion (4.2
 * V class), LFP, NiMH and lead packs from measured cells.
 *
 * <p>Sources: the resource tables beside these classes name theirs row by row. Leaves out:
 * relaxation after a load, charge that comes back in a rest, and self-discharge.
 */
package org.setpower.pack;
