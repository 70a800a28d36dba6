/** The eleven basic colour terms of English (Berlin and Kay 1969). */
export type BasicTerm =
	| 'black'
	| 'white'
	| 'grey'
	| 'red'
	| 'orange'
	| 'brown'
	| 'yellow'
	| 'green'
	| 'blue'
	| 'purple'
	| 'pink';

/** Sorts of colour words that chroma tells apart. */
export type Shade = 'dull' | 'pale';

/** A word for the colour of clothes. */
export type ColourWord = {
	/** The word as British English or German spells it. */
	readonly word: string;
	/** The basic terms it is filed under, the first before the second. */
	readonly basic: readonly [BasicTerm, ...BasicTerm[]];
	/** What the word itself says of chroma: dull like taupe, or nearly white like ivory; left out where it says little. */
	readonly shade?: Shade;
	/** Survey entries that it stands for, commonest first: "navy #223577, navy blue #23387e". */
	readonly entries: string;
};
