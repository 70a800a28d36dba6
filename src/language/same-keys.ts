/** A catalogue with the keys of another, whatever its words: what is missing or too much does not compile. */
export type SameKeys<Catalogue> = {
	readonly [Area in keyof Catalogue]: { readonly [Key in keyof Catalogue[Area]]: string };
};

/** Some of the keys of a catalogue: what a variety of the language says otherwise. */
export type SomeKeys<Catalogue> = {
	readonly [Area in keyof Catalogue]?: { readonly [Key in keyof Catalogue[Area]]?: string };
};
