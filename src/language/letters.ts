/** How many letters somebody may type where many homes are kept: the program refuses others, the page tells it beforehand. */

/** NIST SP 800-63B, section 3.1.1.2 asks for 8 at least where something else is asked too, and for 15 alone; and lets 64 in. */
export const PASSWORD_LETTERS = { least: 15, most: 200 } as const;

/** Of the name of a person. */
export const MOST_NAME_LETTERS = 80;
