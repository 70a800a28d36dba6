import { chroma, type Lab65 } from './lab65.ts';

/**
 * CIELAB chroma under which a colour counts as neutral. Measured: splitting at 12 before clustering keeps a palette's cover and makes it
 * steadier, and treating colours under 12 as exact greys takes away what two garments share only because one lamp lit both.
 */
export const NEUTRAL_CHROMA = 12;

/** Whether a colour counts as neutral. */
export const isNeutral = (lab: Lab65): boolean => chroma(lab) < NEUTRAL_CHROMA;

/** The colour with its tint taken away where it is neutral, so that a lamp's cast on greys is not taken for a likeness. */
export const withExactGrey = (lab: Lab65): Lab65 => (isNeutral(lab) ? [lab[0], 0, 0] : lab);
