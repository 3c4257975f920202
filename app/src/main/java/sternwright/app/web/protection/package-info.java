/**
 * The chapter on protection: whether each metal of a boat under water is protected, how long her anodes last, which faults do most
 * harm, and what readings taken aboard say.
 *
 * <p>In comes a boat and readings as typed; the deed {@code desk.protect.ProtectBoat} answers, {@code paper.drawing} draws. Nothing is
 * written.
 */
@NullMarked
package sternwright.app.web.protection;

import org.jspecify.annotations.NullMarked;
